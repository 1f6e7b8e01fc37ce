import {
  type Evidence,
  evidence,
  fail,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { Compressor } from './compressor.ts'
import { corrections, type ReturnGas } from './corrections.ts'
import type { RatedQuantity, Rating } from './rated-quantity.ts'
import { ratingInWords } from './rating-in-words.ts'
import { ratedValue } from './rating-polynomial.ts'

/** The compressor as found. */
export interface Operating {
  /** Dew temperature at the pressure of the suction port, and at that of the discharge port. */
  readonly suctionDew: Quantity<'temperature'>
  readonly dischargeDew: Quantity<'temperature'>
  readonly gas: ReturnGas
  /** At the terminals, running. */
  readonly voltage?: Quantity<'voltage'>
}

/** What a sound machine would show, and why. */
export interface Expected {
  readonly rating: Rating
  readonly evidence: Evidence
}

/**
 * What the maker's polynomial gives at the dew temperatures as found, corrected for return gas and voltage. The
 * uncertainty is that of dew temperatures, fit and corrections; the tolerance of the rating itself is judged apart.
 *
 * @param operating within the range of use of the rating
 * @returns the expected value; `missing` where the compressor has no such rating or a correction lacks what it needs;
 *   else the reading that is out of range
 * @source AHRI Standard 540 for the polynomial; the corrections name theirs
 */
export function expectedRating(
  compressor: Compressor,
  what: RatedQuantity,
  { suctionDew, dischargeDew, gas, voltage }: Operating,
): Result<Expected, Problem> {
  const polynomial = compressor.ratings.find((rating) => rating.what === what)
  if (!polynomial) {
    return fail({
      kind: 'missing',
      field: `rating of the ${what}`,
      value: 'nothing',
      accepted: 'coefficients or a table',
    })
  }
  const value = ratedValue(polynomial, { suctionDew_K: suctionDew.si, dischargeDew_K: dischargeDew.si })
  if (!value.ok) return value
  const corrected = corrections(what, compressor, gas, voltage)
  if (!corrected.ok) return corrected

  const { si: rated, perSuctionKelvin, perDischargeKelvin } = value.value
  const residual = polynomial.residual ?? 0
  const byDew = Math.hypot(perSuctionKelvin * (suctionDew.u ?? 0), perDischargeKelvin * (dischargeDew.u ?? 0))
  const factor = corrected.value.reduce((product, correction) => product * correction.factor, 1)
  const relative = Math.hypot(byDew / rated, residual / rated, ...corrected.value.map((correction) => correction.u))
  const unknown = outOfRange(`uncertainty of the ${what}`, relative, 0, 1, 'of its value')
  if (unknown) return fail(unknown)

  const rating = { what, si: rated * factor, u: rated * factor * relative }
  const atRating = ratingInWords({ what, si: rated, u: residual })
  const from = [
    evidence(say`rated ${atRating} at dew temperatures of ${suctionDew} and ${dischargeDew}`, POLYNOMIAL_SOURCE),
    ...corrected.value.map((correction) => correction.evidence),
  ]
  return ok({ rating, evidence: evidence(say`Expected ${what} ${ratingInWords(rating)}`, POLYNOMIAL_SOURCE, from) })
}

const POLYNOMIAL_SOURCE = "maker's ten-coefficient polynomial, AHRI Standard 540"
