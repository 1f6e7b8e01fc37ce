import { TWIN_VERSION } from '@chargewright/cycle'
import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { beliefOf, structureOf } from './belief.ts'
import type { CalibratedDevice, Calibration, DeviceCalibration } from './calibration.ts'
import { sound } from './causes/sound.ts'
import { evidence, type LinearModel } from './evidence.ts'
import type { Family } from './family.ts'
import { cholesky, dot, solved } from './gaussian.ts'
import { COMMON_INSTRUMENTS, type Instruments } from './instruments.ts'
import { OBSERVABLE_NAMES, type Observable } from './observable.ts'
import { observe } from './observe.ts'
import { pointsOf } from './point.ts'
import type { WeighedSet } from './reading-set.ts'
import { instrumentCovariance, type Row, rowsIn } from './rows.ts'
import { type Setting, settingsOf } from './setting.ts'
import { beforehand, read } from './weigh.ts'

/** A visit to a system that was confirmed to be sound and rightly charged. */
export interface SoundVisit {
  readonly family: Family
  readonly sets: readonly WeighedSet[]
  readonly instruments?: Instruments
}

/**
 * A calibration that also knows how the twin errs on these systems: offsets, discrepancies and spreads by maximum
 * likelihood, pulled towards the calibration there was. Twenty to fifty visits tell most of what there is to tell.
 *
 * @param version of the new calibration
 * @returns a problem where the calibration was made for another twin; visits in which the twin finds no steady state are
 *   left out
 */
export function recalibrate(
  calibration: Calibration,
  visits: readonly SoundVisit[],
  version: string,
  weightOfOld: number = WEIGHT_OF_OLD,
): Result<Calibration, Problem> {
  if (calibration.twin !== TWIN_VERSION) {
    const accepted = `one made for version ${TWIN_VERSION} of the twin`
    return fail({ kind: 'unsolved', field: 'calibration', value: `for version ${calibration.twin}`, accepted })
  }
  const kinds = Object.keys(calibration.devices) as readonly CalibratedDevice[]
  const devices = kinds.map((kind) => {
    const own = visits.filter(({ family }) => family.device === kind)
    return [kind, learnt(calibration.devices[kind], own, weightOfOld)] as const
  })
  return ok({
    version,
    twin: TWIN_VERSION,
    source: `${calibration.source}; ${visits.length} sound visits`,
    devices: Object.fromEntries(devices) as Calibration['devices'],
  })
}

/** How many sound visits the calibration there was counts for. */
const WEIGHT_OF_OLD = 15
const ROUNDS = 60

function learnt(start: DeviceCalibration, visits: readonly SoundVisit[], weight: number): DeviceCalibration {
  const seen = visits.flatMap((visit) => soundModel(visit, start))
  if (seen.length === 0) return start
  let now = start
  for (let round = 0; round < ROUNDS; round++) now = improved(now, start, seen, weight)
  return { ...now, learntFrom: start.learntFrom + seen.length }
}

/** What the twin makes of one visit if nothing is wrong, with the offsets of `start` taken out. */
interface Seen {
  readonly family: Family
  readonly rows: readonly Row[]
  readonly model: LinearModel
  readonly settings: readonly Setting[]
  readonly instruments: Float64Array
}

function soundModel(
  { family, sets, instruments = COMMON_INSTRUMENTS }: SoundVisit,
  start: DeviceCalibration,
): readonly Seen[] {
  const settings = settingsOf(family.nominal, sets, start)
  if (!settings.ok) return []
  const observed = sets.map(({ readings }) => observe(family.nominal.properties, readings, instruments))
  const rows = rowsIn(observed)
  const [point] = pointsOf(family, settings.value, sound, { ...start, offset: NOTHING })
  if (!point || rows.length === 0) return []
  const columns = family.members.length + OBSERVABLE_NAMES.length
  return [
    {
      family,
      rows,
      model: read({ ...point.model, doubt: new Float64Array(point.model.values.length) }, rows, columns),
      settings: settings.value,
      instruments: instrumentCovariance(rows, observed),
    },
  ]
}

const NOTHING = Object.fromEntries(OBSERVABLE_NAMES.map((name) => [name, 0])) as Readonly<Record<Observable, number>>

/**
 * One round of maximum likelihood: the offsets by least squares, weighted as the spreads have it; the spreads by
 * minorisation and maximisation, which never makes the readings less probable and needs no step length. Both are pulled
 * by the calibration there was, as by so many visits.
 *
 * @source σ² ← σ²·√(Σ(jᵀS⁻¹r)² / Σ jᵀS⁻¹j): Zhou, Hu, Zhou and Lange 2019, "MM algorithms for variance components
 *   models", REMEMBERED
 */
function improved(
  now: DeviceCalibration,
  start: DeviceCalibration,
  seen: readonly Seen[],
  weight: number,
): DeviceCalibration {
  const count = OBSERVABLE_NAMES.length
  const normal = new Float64Array(count * count)
  const right = new Float64Array(count)
  const spreads = new Map<string, Terms>()
  for (const visit of seen) {
    const belief = beliefOf(visit.family, now)
    const found = evidence(
      visit.model,
      beforehand(belief, visit.rows, visit.settings, visit.instruments),
      (i, predicted) => {
        const row = visit.rows[i]!
        return row.value - predicted - now.offset[row.observable]
      },
    )
    if (!found) continue
    const n = visit.rows.length
    // A visit that lies far out counts less, as under heavier tails than a Gaussian's.
    const counts = (TAIL + n) / (TAIL + found.distance)
    for (const [i, { index }] of visit.rows.entries()) {
      const unit = new Float64Array(n)
      unit[i] = 1
      const column = solved(found.triangle, unit)
      for (const [j, other] of visit.rows.entries()) normal[index * count + other.index]! += counts * column[j]!
      right[index]! += counts * found.pull[i]!
    }
    const columns = belief.names.length
    for (const [a, name] of belief.names.entries()) {
      const slope = Float64Array.from(visit.rows, (_, i) => visit.model.slopes[i * columns + a]!)
      const prior = visit.family.members[a]?.nuisance.sd ?? 1
      const terms = spreads.get(name) ?? { explained: 0, expected: 0 }
      spreads.set(name, {
        explained: terms.explained + counts * (prior * dot(slope, found.pull)) ** 2,
        expected: terms.expected + prior ** 2 * dot(slope, solved(found.triangle, slope)),
      })
    }
  }
  const offset = { ...now.offset }
  // What the old calibration counts for: so many visits more, of the same kind, that had its offsets.
  const share = weight / seen.length
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      const name = OBSERVABLE_NAMES[j]!
      right[i]! += share * normal[i * count + j]! * (start.offset[name] - now.offset[name])
    }
  }
  for (let at = 0; at < normal.length; at++) normal[at]! *= 1 + share
  for (let i = 0; i < count; i++) normal[i * count + i]! += NEVER_READ
  const shift = solved(cholesky(normal, count)!, right)
  for (const [i, name] of OBSERVABLE_NAMES.entries()) offset[name] += shift[i]!

  const fitted = (name: string, old: number, prior: number) => {
    const { explained, expected } = spreads.get(name) ?? { explained: 0, expected: 0 }
    const from = old ** 2
    return ((from ** 2 * explained + weight * prior ** 2) / (expected + weight / from)) ** 0.25
  }
  const names = [...spreads.keys()].filter((name) => !name.startsWith(structureOf('')))
  const spread = names.map((name) => [name, fitted(name, now.spread[name] ?? 1, start.spread[name] ?? 1)])
  const discrepancy = OBSERVABLE_NAMES.map((name) => {
    const [old, prior] = [now.discrepancy[name], start.discrepancy[name]].map((sd) => Math.max(sd, LEAST_SPREAD))
    return [name, fitted(structureOf(name), old!, prior!)]
  })
  return {
    ...now,
    offset,
    discrepancy: Object.fromEntries(discrepancy) as DeviceCalibration['discrepancy'],
    spread: { ...now.spread, ...Object.fromEntries(spread) },
  }
}

interface Terms {
  readonly explained: number
  readonly expected: number
}

/** Degrees of freedom of the tails: own choice. */
const TAIL = 8
/** Keeps the offset of an observable that nobody read where it was. */
const NEVER_READ = 1e-9
/** No spread is taken for less, in whatever unit. */
const LEAST_SPREAD = 1e-3
