import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { type DewUnit, degreesPerKelvin, fromKelvin } from './dew-unit.ts'
import { type RatedQuantity, siPerUnit } from './rated-quantity.ts'
import { type DewPair, outsideRegion, type Region } from './region.ts'

/** Ten coefficients in the order in which the standard prints them, with all that is needed to use them. */
export interface RatingPolynomial {
  readonly what: RatedQuantity
  readonly dewUnit: DewUnit
  /** One of the units of `what`: lb/h, W, … */
  readonly unit: string
  readonly coefficients: readonly number[]
  /** Outside it the polynomial is not used: a cubic goes anywhere. */
  readonly region: Region
  /** Standard deviation of the figures it was fitted to about it, SI; absent for coefficients as printed. */
  readonly residual?: number
}

/** A value in SI and its slopes, per kelvin. */
export interface RatedValue {
  readonly si: number
  readonly perSuctionKelvin: number
  readonly perDischargeKelvin: number
}

/**
 * Value of a rating at dew temperatures,
 * X = C₁ + C₂S + C₃D + C₄S² + C₅SD + C₆D² + C₇S³ + C₈DS² + C₉SD² + C₁₀D³.
 *
 * @param at within the region of the polynomial
 * @returns SI; else the temperature that is outside, or `unsolved` where a slip in a coefficient makes the rating negative
 * @source AHRI Standard 540, ten-coefficient form. Term order READ in two published open implementations of it.
 */
export function ratedValue(polynomial: RatingPolynomial, at: DewPair): Result<RatedValue, Problem> {
  const outside = outsideRegion(polynomial.region, at)
  if (outside) return fail(outside)
  const { what, unit, dewUnit, coefficients } = polynomial
  const perUnit = siPerUnit(what, unit)
  if (perUnit === undefined)
    return fail({ kind: 'unknown', field: `unit of the ${what}`, value: unit, accepted: 'a unit of it' })
  const S = fromKelvin(at.suctionDew_K, dewUnit)
  const D = fromKelvin(at.dischargeDew_K, dewUnit)
  const X = sum(
    coefficients,
    TERMS.map(([i, j]) => S ** i * D ** j),
  )
  if (!(X > 0 && Number.isFinite(X))) {
    const value = `${S.toFixed(1)} and ${D.toFixed(1)} ${dewUnit}`
    return fail({
      kind: 'unsolved',
      field: what,
      value,
      accepted: `the coefficients give ${X} ${unit}, but a rating is positive`,
    })
  }
  const dS = sum(
    coefficients,
    TERMS.map(([i, j]) => (i === 0 ? 0 : i * S ** (i - 1) * D ** j)),
  )
  const dD = sum(
    coefficients,
    TERMS.map(([i, j]) => (j === 0 ? 0 : j * S ** i * D ** (j - 1))),
  )
  const perKelvin = perUnit * degreesPerKelvin(dewUnit)
  return ok({ si: X * perUnit, perSuctionKelvin: dS * perKelvin, perDischargeKelvin: dD * perKelvin })
}

/** Powers of S and D in the ten terms. Eighth and ninth are the trap: D S² comes before S D². */
export const TERMS: readonly (readonly [powerOfS: number, powerOfD: number])[] = [
  [0, 0],
  [1, 0],
  [0, 1],
  [2, 0],
  [1, 1],
  [0, 2],
  [3, 0],
  [2, 1],
  [1, 2],
  [0, 3],
]

function sum(coefficients: readonly number[], terms: readonly number[]): number {
  return terms.reduce((total, term, i) => total + (coefficients[i] ?? Number.NaN) * term, 0)
}
