import type { Unknowns } from '@chargewright/cycle'
import type { DeviceCalibration } from './calibration.ts'
import type { Cause } from './cause.ts'
import type { LinearModel } from './evidence.ts'
import type { Family } from './family.ts'
import { isCharge } from './hypotheses.ts'
import type { Hypothesis } from './hypothesis.ts'
import { OBSERVABLE_NAMES } from './observable.ts'
import { COUNT } from './observe.ts'
import { type Prediction, predict } from './predict.ts'
import type { Setting } from './setting.ts'

/** One cause at one severity, or two: its prior and its predictions for every observable of every set. */
export interface Point {
  readonly causes: readonly [Cause] | readonly [Cause, Cause]
  readonly severities: readonly number[]
  /** Charge at the centre of the cell, over the right charge minus 1. */
  readonly charge: number
  readonly lnPrior: number
  /** Per set, where a neighbour may start its search. */
  readonly unknowns: readonly Unknowns[]
  /** For all observables, read or not: set after set in the order of `OBSERVABLE_NAMES`. */
  readonly model: LinearModel
}

/** The points of one single cause; severities at which the system would not run are left out. */
export function pointsOf(
  family: Family,
  settings: readonly Setting[],
  hypothesis: Hypothesis,
  calibration: DeviceCalibration,
): readonly Point[] {
  const { grid, cause, prior, apply } = hypothesis
  const points: Point[] = []
  let starts: readonly (Unknowns | undefined)[] = []
  for (const [i, severity] of grid.entries()) {
    const width = cellWidth(grid, i)
    const step = SEVERITY_STEP * (width || 1)
    const predictions = settings.map((setting, set) =>
      predict(
        family,
        setting,
        (state) => apply(state, severity),
        (state) => apply(state, severity + step),
        step,
        starts[set],
      ),
    )
    if (!predictions.every((p) => p !== undefined)) {
      starts = []
      continue
    }
    starts = predictions.map(({ unknowns }) => unknowns)
    const share = width === 0 ? 1 : width / totalWidth(grid)
    points.push({
      causes: [cause],
      severities: [severity],
      charge: isCharge(cause) ? severity : 0,
      lnPrior: Math.log(prior * share),
      unknowns: starts as readonly Unknowns[],
      model: stacked(predictions, calibration, CELL_SD * width, isCharge(cause) ? 0 : CHARGE_SD),
    })
  }
  return points
}

/** A cell's Gaussian over its width: a little more than that of an even spread (1/√12), so that cells join smoothly. */
const CELL_SD = 0.4
/** Share of a cell along which its slope is taken. */
const SEVERITY_STEP = 0.15
/** Spread of the charge of systems whose charge is not the trouble, over the right charge: *common practice*. */
export const CHARGE_SD = 0.025

/** From half-way to the one neighbour to half-way to the other. */
export function cellWidth(grid: readonly number[], i: number): number {
  const here = grid[i]!
  const [before, after] = [grid[i - 1], grid[i + 1]]
  if (before === undefined && after === undefined) return 0
  const down = here - (before ?? 2 * here - after!)
  const up = (after ?? 2 * here - before!) - here
  return (down + up) / 2
}

const totalWidth = (grid: readonly number[]) => grid.reduce((sum, _, i) => sum + cellWidth(grid, i), 0)

/** All sets of one point as one linear model: members of the family, then the structure, shared by the sets. */
function stacked(
  predictions: readonly Prediction[],
  { offset }: DeviceCalibration,
  severitySd: number,
  chargeSd: number,
): LinearModel {
  const members = predictions[0]!.slopes.length - 2
  const columns = members + COUNT
  const n = predictions.length * COUNT
  const values = new Float64Array(n)
  const slopes = new Float64Array(n * columns)
  const severity = new Float64Array(n)
  const charge = new Float64Array(n)
  for (const [set, prediction] of predictions.entries()) {
    for (let i = 0; i < COUNT; i++) {
      const row = set * COUNT + i
      values[row] = prediction.values[i]! + offset[OBSERVABLE_NAMES[i]!]
      for (let a = 0; a < members; a++) slopes[row * columns + a] = prediction.slopes[a]![i]!
      slopes[row * columns + members + i] = 1
      severity[row] = prediction.slopes[members]![i]!
      charge[row] = prediction.slopes[members + 1]![i]!
    }
  }
  return { values, slopes, severity: { slope: severity, sd: severitySd }, charge: { slope: charge, sd: chargeSd } }
}
