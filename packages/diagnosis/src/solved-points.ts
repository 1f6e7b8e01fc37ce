import type { DeviceCalibration } from './calibration.ts'
import type { Family } from './family.ts'
import type { Hypothesis } from './hypothesis.ts'
import { pairPoints } from './pairs.ts'
import { type Point, pointsOf } from './point.ts'
import type { Setting } from './setting.ts'

/** What the twin predicts of every cause at every severity, alone and in pairs. */
export interface SolvedPoints {
  readonly singles: readonly Point[]
  readonly pairs: readonly Point[]
}

/**
 * Solves every point. The last few of a family are kept: they answer to the weather and to what was weighed in, not to
 * what was read of the circuit, and a visit is judged again after every reading.
 */
export function solvedPoints(
  family: Family,
  settings: readonly Setting[],
  hypotheses: readonly Hypothesis[],
  calibration: DeviceCalibration,
): SolvedPoints {
  // The one thing in a setting that is no plain figure, a curve of the air, follows from the pressure beside it.
  const key = JSON.stringify([hypotheses.map(({ cause }) => cause), settings])
  const ofFamily = kept.get(family) ?? []
  const found = ofFamily.find((one) => one.calibration === calibration && one.key === key)
  const solved = found ?? { calibration, key, points: solve(family, settings, hypotheses, calibration) }
  kept.set(family, [solved, ...ofFamily.filter((one) => one !== found)].slice(0, MOST_KEPT))
  return solved.points
}

interface Kept {
  readonly calibration: DeviceCalibration
  readonly key: string
  readonly points: SolvedPoints
}

/** Of every family that is still in use, the latest first. */
const kept = new WeakMap<Family, readonly Kept[]>()
/** The sets before and after a few steps, with and without a cause that was ruled out, and a sound one for the maker's word. */
const MOST_KEPT = 6

function solve(
  family: Family,
  settings: readonly Setting[],
  hypotheses: readonly Hypothesis[],
  calibration: DeviceCalibration,
): SolvedPoints {
  const singles = hypotheses.flatMap((hypothesis) => pointsOf(family, settings, hypothesis, calibration))
  return { singles, pairs: pairPoints(family, settings, hypotheses, singles, calibration) }
}
