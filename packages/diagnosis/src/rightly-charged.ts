import type { DeviceCalibration } from './calibration.ts'
import type { Family } from './family.ts'
import { OBSERVABLE_NAMES } from './observable.ts'
import { COUNT } from './observe.ts'
import { solvedAt } from './predict.ts'
import type { Setting } from './setting.ts'

/**
 * What every set would read with nothing wrong and the charge right: against it the effect of a cause is counted, that of
 * refrigerant weighed in since the first set included. Undefined where such a system would not run.
 */
export function rightlyCharged(
  family: Family,
  settings: readonly Setting[],
  { offset }: Pick<DeviceCalibration, 'offset'>,
): Float64Array | undefined {
  const values = new Float64Array(settings.length * COUNT)
  for (const [set, setting] of settings.entries()) {
    const solved = solvedAt(family, { ...setting, added_kg: 0 }, (state) => state, undefined)
    if (!solved) return undefined
    for (let i = 0; i < COUNT; i++) values[set * COUNT + i] = solved.values[i]! + offset[OBSERVABLE_NAMES[i]!]
  }
  return values
}
