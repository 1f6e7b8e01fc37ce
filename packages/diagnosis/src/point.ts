import type { Unknowns } from '@chargewright/cycle'
import { alike } from './alike.ts'
import type { DeviceCalibration } from './calibration.ts'
import type { Cause } from './cause.ts'
import { meanResponse, twinDeviationAfter } from './charge-response.ts'
import type { LinearModel } from './evidence.ts'
import type { Family } from './family.ts'
import { isCharge } from './hypotheses.ts'
import type { Hypothesis } from './hypothesis.ts'
import { OBSERVABLE_NAMES } from './observable.ts'
import { COUNT } from './observe.ts'
import { type Solved, slopesAt, solvedAt } from './predict.ts'
import type { Setting } from './setting.ts'

/** One cause at one severity, or two, as it is by the newest set: its prior and its predictions for every observable of every set. */
export interface Point {
  readonly causes: readonly [Cause] | readonly [Cause, Cause]
  readonly severities: readonly number[]
  /** Charge at the centre of the cell, over the right charge minus 1, by the newest set. */
  readonly charge: number
  readonly lnPrior: number
  /** Per set, where a neighbour may start its search. */
  readonly unknowns: readonly Unknowns[]
  /** For all observables, read or not: set after set in the order of `OBSERVABLE_NAMES`. */
  readonly model: Predicted
}

/** What is predicted, before it is doubted. */
export type Predicted = Omit<LinearModel, 'doubt'>

/**
 * The points of one single cause: every severity is solved; the slopes are taken at the first, the middle and the last
 * and lie evenly between. Severities at which the system would not run are left out.
 */
export function pointsOf(
  family: Family,
  settings: readonly Setting[],
  hypothesis: Hypothesis,
  calibration: DeviceCalibration,
): readonly Point[] {
  const { grid, cause, prior } = hypothesis
  const touchesCharge = isCharge(cause)
  const effects = settings.map((setting) => effectIn(setting, hypothesis, calibration))
  const running = runningAt(family, settings, grid, effects)
  const anchors = new Set([0, Math.floor((running.length - 1) / 2), running.length - 1])
  const anchored = [...anchors].flatMap((at) => {
    const point = running[at]
    if (!point) return []
    const step = SEVERITY_STEP * (point.width || 1)
    const slopes = settings.map((setting, set) =>
      slopesAt(
        family,
        setting,
        point.solved[set]!,
        (state) => effects[set]!(state, point.severity),
        (state) => effects[set]!(state, point.severity + step),
        step,
      ),
    )
    return [{ severity: point.severity, slopes }]
  })
  const { added } = settings.at(-1)!
  return running.map(({ severity, width, solved }) => ({
    ...nowadays(cause, severity, added),
    lnPrior: Math.log(width === 0 ? prior : (prior * width) / totalWidth(grid)),
    unknowns: solved.map(({ unknowns }) => unknowns),
    model: stacked(
      settings,
      solved.map(({ values }) => values),
      slopesBetween(anchored, severity),
      calibration,
      CELL_SD * width,
      touchesCharge ? 0 : CHARGE_SD,
    ),
  }))
}

/**
 * What a point stands for by the newest set: refrigerant weighed in since the first adds to what the charge was off, and a
 * system that was short may by now be right, or overcharged.
 */
function nowadays(cause: Cause, severity: number, added: number): Pick<Point, 'causes' | 'severities' | 'charge'> {
  if (cause !== 'sound' && !isCharge(cause)) return { causes: [cause], severities: [severity], charge: added }
  const charge = severity + added
  const now = Math.abs(charge) <= RIGHT_WITHIN ? 'sound' : charge < 0 ? 'short-of-charge' : 'overcharged'
  return { causes: [now], severities: [charge], charge }
}

/** Nearer to the right charge than the mildest point of a charge that is off. */
const RIGHT_WITHIN = 0.05

/** What a cause does to the twin in one set: a charge that is off answers as real systems do, with what was weighed since. */
export const effectIn =
  (
    { added }: Setting,
    { cause, apply }: Hypothesis,
    { chargeResponse }: Pick<DeviceCalibration, 'chargeResponse'>,
  ): Hypothesis['apply'] =>
  (state, severity) =>
    apply(state, isCharge(cause) ? twinDeviationAfter(added, severity, chargeResponse) : severity)

interface Running {
  readonly severity: number
  /** Of its cell. */
  readonly width: number
  /** Per set. */
  readonly solved: readonly Solved[]
}

/** Every severity solved in every set, each starting from its neighbour. */
function runningAt(
  family: Family,
  settings: readonly Setting[],
  grid: readonly number[],
  effects: readonly Hypothesis['apply'][],
): readonly Running[] {
  let last: readonly Solved[] | undefined
  return grid.flatMap((severity, i) => {
    const solved = settings.map((setting, set) =>
      solvedAt(family, setting, (state) => effects[set]!(state, severity), last?.[set]?.unknowns),
    )
    last = solved.every((one) => one !== undefined) ? solved : undefined
    return last ? [{ severity, width: cellWidth(grid, i), solved: last }] : []
  })
}

interface Anchor {
  readonly severity: number
  /** Per set, per unknown. */
  readonly slopes: readonly (readonly Float64Array[])[]
}

function slopesBetween(anchors: readonly Anchor[], severity: number): Anchor['slopes'] {
  const exact = anchors.find((anchor) => anchor.severity === severity)
  if (exact) return exact.slopes
  const at = anchors.findIndex((anchor) => anchor.severity > severity)
  const [below, above] = [anchors[at - 1]!, anchors[at]!]
  const share = (severity - below.severity) / (above.severity - below.severity)
  return below.slopes.map((perSet, set) =>
    perSet.map((slope, k) => {
      const other = above.slopes[set]![k]!
      return slope.map((value, i) => value + share * (other[i]! - value))
    }),
  )
}

/** A cell's Gaussian over its width: a little more than that of an even spread (1/√12), so that cells join smoothly. */
const CELL_SD = 0.4
/** Share of a cell along which its slope is taken. */
const SEVERITY_STEP = 0.15
/** Spread of the charge of systems whose charge is not the trouble, over the right charge: *common practice*. */
const CHARGE_SD = 0.025

/** From half-way to the one neighbour to half-way to the other. */
function cellWidth(grid: readonly number[], i: number): number {
  const here = grid[i]!
  const [before, after] = [grid[i - 1], grid[i + 1]]
  if (before === undefined && after === undefined) return 0
  const down = here - (before ?? 2 * here - after!)
  const up = (after ?? 2 * here - before!) - here
  return (down + up) / 2
}

const totalWidth = (grid: readonly number[]) => grid.reduce((sum, _, i) => sum + cellWidth(grid, i), 0)

/** All sets of one point as one linear model: members of the family, then the structure, as it is in the newest set. */
function stacked(
  settings: readonly Setting[],
  predictions: readonly Float64Array[],
  slopesPerSet: Anchor['slopes'],
  { offset, chargeResponse }: DeviceCalibration,
  severitySd: number,
  chargeSd: number,
): Predicted {
  const members = slopesPerSet[0]!.length - 2
  const columns = members + COUNT
  const n = predictions.length * COUNT
  const values = new Float64Array(n)
  const slopes = new Float64Array(n * columns)
  const severity = new Float64Array(n)
  const charge = new Float64Array(n)
  for (const [set, prediction] of predictions.entries()) {
    const along = slopesPerSet[set]!
    const likeNewest = alike(settings[set]!, settings.at(-1)!)
    for (let i = 0; i < COUNT; i++) {
      const row = set * COUNT + i
      values[row] = prediction[i]! + offset[OBSERVABLE_NAMES[i]!]
      for (let a = 0; a < members; a++) slopes[row * columns + a] = along[a]![i]!
      slopes[row * columns + members + i] = likeNewest
      severity[row] = along[members]![i]!
      charge[row] = meanResponse(chargeResponse) * along[members + 1]![i]!
    }
  }
  return { values, slopes, severity: { slope: severity, sd: severitySd }, charge: { slope: charge, sd: chargeSd } }
}
