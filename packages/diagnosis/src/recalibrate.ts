import { TWIN_VERSION } from '@chargewright/cycle'
import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { beliefOf, structureOf } from './belief.ts'
import type { CalibratedDevice, Calibration, DeviceCalibration } from './calibration.ts'
import { sound } from './causes/sound.ts'
import { type Beforehand, evidence, type LinearModel } from './evidence.ts'
import type { Family } from './family.ts'
import { dot, solved } from './gaussian.ts'
import { COMMON_INSTRUMENTS, type Instruments } from './instruments.ts'
import { OBSERVABLE_NAMES, type Observable } from './observable.ts'
import { observe } from './observe.ts'
import { pointsOf } from './point.ts'
import type { WeighedSet } from './reading-set.ts'
import { clampDirections, instrumentCovariance, type Row, rowsIn } from './rows.ts'
import { settingsOf } from './setting.ts'
import { beforehand, read } from './weigh.ts'

/** A visit to a system that was confirmed to be sound and rightly charged. */
export interface SoundVisit {
  readonly family: Family
  readonly sets: readonly WeighedSet[]
  readonly instruments?: Instruments
}

/**
 * A calibration that also knows how the twin errs on these systems: offsets, discrepancies and spreads by expectation
 * and maximisation, pulled towards the calibration there was. Twenty to fifty visits tell most of what there is to tell.
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
  readonly instruments: Float64Array
  readonly clamps: readonly Float64Array[]
}

function soundModel(
  { family, sets, instruments = COMMON_INSTRUMENTS }: SoundVisit,
  start: DeviceCalibration,
): readonly Seen[] {
  const settings = settingsOf(sets)
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
      model: read(point.model, rows, columns),
      instruments: instrumentCovariance(rows, observed),
      clamps: clampDirections(rows),
    },
  ]
}

const NOTHING = Object.fromEntries(OBSERVABLE_NAMES.map((name) => [name, 0])) as Readonly<Record<Observable, number>>

/** One round: what each visit's unknowns were, given the spreads; then the spreads, given those. */
function improved(
  now: DeviceCalibration,
  start: DeviceCalibration,
  seen: readonly Seen[],
  weight: number,
): DeviceCalibration {
  const spreads = new Map<string, Moments>()
  const structure = new Map<string, Moments>()
  for (const visit of seen) {
    const belief = beliefOf(visit.family, now)
    const before: Beforehand = beforehand(belief, visit.instruments, visit.clamps)
    const found = evidence(visit.model, before, (i, predicted) => {
      const row = visit.rows[i]!
      return row.value - predicted - now.offset[row.observable]
    })
    if (!found) continue
    const n = visit.rows.length
    // A visit that lies far out counts less, as under heavier tails than a Gaussian's.
    const counts = (TAIL + n) / (TAIL + found.distance)
    const k = before.unknowns
    for (const [a, name] of belief.names.entries()) {
      const cross = found.cross.subarray(a * n, (a + 1) * n)
      const mean = dot(cross, found.pull)
      const variance = before.covariance[a * k + a]! - dot(cross, solved(found.triangle, cross))
      const member = visit.family.members[a]
      if (member) {
        const prior = member.nuisance.sd
        add(spreads, name, counts, mean / prior, variance / prior ** 2)
      } else if (visit.rows.some(({ observable }) => structureOf(observable) === name)) {
        add(structure, name, counts, mean, variance)
      }
    }
  }
  const offset = { ...now.offset }
  const discrepancy = { ...now.discrepancy }
  for (const name of OBSERVABLE_NAMES) {
    const found = structure.get(structureOf(name))
    if (!found) continue
    const { visits, sum, squares } = found
    const shift = (weight * (start.offset[name] - now.offset[name]) + sum) / (weight + visits)
    offset[name] = now.offset[name] + shift
    const about = squares - 2 * shift * sum + visits * shift ** 2
    discrepancy[name] = Math.sqrt((weight * start.discrepancy[name] ** 2 + about) / (weight + visits))
  }
  const spread = { ...now.spread }
  for (const [name, { visits, squares }] of spreads) {
    const old = (start.spread[name] ?? 1) ** 2
    spread[name] = Math.sqrt((weight * old + squares) / (weight + visits))
  }
  return { ...now, offset, discrepancy, spread }
}

interface Moments {
  visits: number
  sum: number
  squares: number
}

function add(to: Map<string, Moments>, name: string, counts: number, mean: number, variance: number) {
  const { visits, sum, squares } = to.get(name) ?? { visits: 0, sum: 0, squares: 0 }
  // The weight of a far visit thins its pull, not what stays unknown of it.
  to.set(name, { visits: visits + 1, sum: sum + counts * mean, squares: squares + counts * mean * mean + variance })
}

/** Degrees of freedom of the tails: own choice. */
const TAIL = 8
