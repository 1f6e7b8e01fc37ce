import { type Belief, linkedIn } from './belief.ts'
import type { Cause } from './cause.ts'
import type { ReadingOutlook, Spread } from './diagnosis.ts'
import { dot, solved } from './gaussian.ts'
import { type Mixture, moments } from './mixture.ts'
import { OBSERVABLE_NAMES, type Observable } from './observable.ts'
import { COUNT } from './observe.ts'
import type { Row } from './rows.ts'
import type { Gaussian, WeighedPoint } from './weigh.ts'

/**
 * What each single cause expects of each observable, given all other readings: of those that were read as if they had
 * not been, and in the last set of those that were not.
 *
 * @param shares of each point within its own cause
 */
export function outlook(
  points: readonly WeighedPoint[],
  shares: readonly number[],
  rows: readonly Row[],
  sets: number,
  belief: Belief,
): readonly ReadingOutlook[] {
  const kept = points.flatMap((weighed, i) => (shares[i]! > NEGLIGIBLE ? [{ weighed, share: shares[i]! }] : []))
  const inverses = kept.map(({ weighed }) => inverseDiagonal(weighed))
  const perCause = (of: (weighed: WeighedPoint, k: number) => Gaussian): Readonly<Partial<Record<Cause, Spread>>> => {
    const mixtures = new Map<Cause, Mixture>()
    for (const [k, { weighed, share }] of kept.entries()) {
      const cause = weighed.point.causes[0]
      mixtures.set(cause, [...(mixtures.get(cause) ?? []), { ...of(weighed, k), share }])
    }
    return Object.fromEntries([...mixtures].map(([cause, mixture]) => [cause, moments(normalised(mixture))]))
  }
  const read = rows.map(({ set, observable, value }, i) => ({
    observable,
    set,
    read: value,
    expected: perCause(({ evidence }, k) => {
      const precision = inverses[k]![i]!
      return { mean: value - evidence.pull[i]! / precision, variance: 1 / precision }
    }),
  }))
  const last = sets - 1
  const linked = linkedIn(belief)
  const missing = OBSERVABLE_NAMES.filter((name) => !rows.some((row) => row.set === last && row.observable === name))
  const unread = missing.map((observable) => ({
    observable,
    set: last,
    read: undefined,
    expected: perCause((weighed) => conditional(weighed, last, observable, belief, linked, rows)),
  }))
  return [...read, ...unread]
}

/** A point that says less than this of its cause is left out. */
const NEGLIGIBLE = 0.02

function normalised(mixture: Mixture): Mixture {
  const total = mixture.reduce((sum, { share }) => sum + share, 0)
  return mixture.map((part) => ({ ...part, share: part.share / total }))
}

/** Diagonal of S⁻¹. */
function inverseDiagonal({ evidence: { triangle, residual } }: WeighedPoint): Float64Array {
  return residual.map((_, i) => {
    const unit = new Float64Array(residual.length)
    unit[i] = 1
    return solved(triangle, unit)[i]!
  })
}

/** Of a reading not yet taken, given those that were: the Gaussian's own conditional. */
function conditional(
  { point, evidence, model }: WeighedPoint,
  set: number,
  observable: Observable,
  { mean, covariance }: Belief,
  linked: ReturnType<typeof linkedIn>,
  rows: readonly Row[],
): Gaussian {
  const columns = mean.length
  const at = set * COUNT + OBSERVABLE_NAMES.indexOf(observable)
  const slope = point.model.slopes.subarray(at * columns, (at + 1) * columns)
  const { severity, charge } = point.model
  const shared = new Float64Array(rows.length)
  for (let i = 0; i < rows.length; i++) {
    let sum = 0
    for (let a = 0; a < columns; a++) sum += slope[a]! * evidence.cross[a * rows.length + i]!
    sum += severity.sd ** 2 * severity.slope[at]! * model.severity.slope[i]!
    sum += charge.sd ** 2 * charge.slope[at]! * model.charge.slope[i]!
    shared[i] = sum
  }
  let own = TYPICAL_ERROR[observable] ** 2 + (severity.sd * severity.slope[at]!) ** 2
  own += (charge.sd * charge.slope[at]!) ** 2
  for (let a = 0; a < columns; a++) {
    for (const b of linked[a]!) own += slope[a]! * covariance[a * columns + b]! * slope[b]!
  }
  const predicted = point.model.values[at]! + dot(slope, mean)
  return {
    mean: predicted + dot(shared, evidence.pull),
    variance: Math.max(own - dot(shared, solved(evidence.triangle, shared)), TYPICAL_ERROR[observable] ** 2),
  }
}

/** Error of a reading not yet taken, with the common instruments, in the unit of the observable. */
const TYPICAL_ERROR: Readonly<Record<Observable, number>> = {
  evaporating: 0.6,
  superheat: 0.8,
  condensing: 0.6,
  subcooling: 0.8,
  discharge: 1.5,
  condenserAirRise: 0.7,
  supplyAirDrop: 0.7,
  compressorPower: 0.03,
  power: 0.03,
  drierDrop: 0.6,
  standstill: 0.7,
}
