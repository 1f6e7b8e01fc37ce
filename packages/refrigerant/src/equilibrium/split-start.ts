import type { Incipient } from './incipient.ts'
import type { Split } from './split.ts'

/**
 * The bubble and the dew point of one pressure, between which a split is sought. Vapour and liquid mass fractions are
 * tied by K_i = v_i/l_i; ln K and the densities are nearly straight in temperature between the two ends.
 */
export interface Ends {
  readonly massFraction: Float64Array
  readonly lnK: readonly [bubble: Float64Array, dew: Float64Array]
  readonly temperature: readonly [number, number]
  /** ln of the mass densities. */
  readonly liquid: readonly [number, number]
  readonly vapour: readonly [number, number]
  readonly molarMass: Float64Array
}

const BISECTIONS = 40

/** From both lines just solved at the same pressure. */
export function endsOf(bubble: Incipient, dew: Incipient, massFraction: Float64Array): Ends {
  const molarMass = Float64Array.from(bubble.model.components, (fluid) => fluid.molarMass_kg_mol)
  const b = sides(bubble, molarMass)
  const d = sides(dew, molarMass)
  return {
    massFraction,
    lnK: [b.other.map((v, i) => Math.log(v / b.given[i]!)), d.given.map((v, i) => Math.log(v / d.other[i]!))],
    temperature: [b.temperature, d.temperature],
    liquid: [b.givenDensity, d.otherDensity],
    vapour: [b.otherDensity, d.givenDensity],
    molarMass,
  }
}

/** Fills the unknowns of the split for a temperature or a quality between the ends. */
export function startSplit({ u }: Split, ends: Ends, specified: 'temperature' | 'quality', value: number): void {
  const { massFraction, molarMass, temperature } = ends
  const count = massFraction.length
  const share =
    specified === 'temperature'
      ? (value - temperature[0]) / (temperature[1] - temperature[0])
      : bisect((s) => -imbalance(ends, s, value))
  const quality = specified === 'quality' ? value : bisect((q) => imbalance(ends, share, q))
  let liquid = 0
  let vapour = 0
  for (let i = 0; i < count; i++) {
    const K = Math.exp(between(ends.lnK[0][i]!, ends.lnK[1][i]!, share))
    const l = massFraction[i]! / (1 + quality * (K - 1))
    u[i] = l
    u[count + i] = K * l
    liquid += l
    vapour += K * l
  }
  const lnL = between(ends.liquid[0], ends.liquid[1], share) - Math.log(liquid)
  const lnV = between(ends.vapour[0], ends.vapour[1], share) - Math.log(vapour)
  for (let i = 0; i < count; i++) {
    u[i] = Math.log(u[i]! / molarMass[i]!) + lnL
    u[count + i] = Math.log(u[count + i]! / molarMass[i]!) + lnV
  }
  u[2 * count] = Math.log(between(temperature[0], temperature[1], share))
  u[2 * count + 1] = quality
}

/**
 * The balance of Rachford and Rice, Σ w_i·(K_i − 1)/(1 + q·(K_i − 1)): zero at the solution, falling with the quality
 * and rising with the temperature.
 */
function imbalance({ massFraction, lnK }: Ends, share: number, quality: number): number {
  let sum = 0
  for (let i = 0; i < massFraction.length; i++) {
    const excess = Math.expm1(between(lnK[0][i]!, lnK[1][i]!, share))
    sum += (massFraction[i]! * excess) / (1 + quality * excess)
  }
  return sum
}

/** Root between 0 and 1 of a function that falls; the nearer end if there is none. */
function bisect(falling: (t: number) => number): number {
  let low = 0
  let high = 1
  for (let k = 0; k < BISECTIONS; k++) {
    const middle = (low + high) / 2
    if (falling(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

const between = (a: number, b: number, share: number): number => a + share * (b - a)

/** Mass fractions and ln mass density of both phases of an incipient point. */
function sides(point: Incipient, molarMass: Float64Array) {
  const { u, z } = point
  const count = z.length
  const other = molarMass.map((M, i) => M * Math.exp(u[i]!))
  const given = molarMass.map((M, i) => M * z[i]! * Math.exp(u[count]!))
  const otherSum = other.reduce((a, b) => a + b, 0)
  const givenSum = given.reduce((a, b) => a + b, 0)
  return {
    other: other.map((m) => m / otherSum),
    given: given.map((m) => m / givenSum),
    otherDensity: Math.log(otherSum),
    givenDensity: Math.log(givenSum),
    temperature: Math.exp(u[count + 1]!),
  }
}
