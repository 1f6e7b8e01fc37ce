import { kelvin, pascal } from '@chargewright/quantity'
import { type Refrigerant, saturationAtPressure, saturationAtTemperature, stateAt } from '@chargewright/refrigerant'
import type { CyclePoints } from './cycle-points.ts'
import type { Window } from './saturation-lines.ts'

/** Without readings the plate shows the trade's usual range of evaporating and condensing temperatures. */
const USUAL_EVAPORATING_K = 263.15
const USUAL_CONDENSING_K = 318.15
/** How much of the plane is shown around the cycle. */
const BELOW = 0.5
const ABOVE_CRITICAL = 1.1
const HOTTER_K = 55

/** The window around a cycle, with the whole dome above it; undefined where the equations do not reach it. */
export function plateWindow(refrigerant: Refrigerant, { low, high, points }: CyclePoints): Window | undefined {
  const { critical, range } = refrigerant
  const dewPressure = (T: number) => {
    const at = saturationAtTemperature(refrigerant, kelvin(T))
    return at.ok ? at.value.dew.pressure_Pa : undefined
  }
  const lowest = dewPressure(range.minTemperature_K + 1) ?? 0
  const pressure = low?.pressure ?? dewPressure(USUAL_EVAPORATING_K) ?? critical.pressure_Pa / 10
  const bottom_Pa = Math.max(BELOW * pressure, lowest)
  const bottom = saturationAtPressure(refrigerant, pascal(bottom_Pa))
  if (!bottom.ok) return undefined
  const condensing = high?.saturation.si ?? Math.min(USUAL_CONDENSING_K, 0.95 * critical.temperature_K)
  return {
    bottom_Pa,
    top_Pa: ABOVE_CRITICAL * critical.pressure_Pa,
    coldest_K: Math.max(range.minTemperature_K, bottom.value.bubble.temperature_K - 2),
    hottest_K: Math.max(condensing + HOTTER_K, ...points.map(({ temperature }) => temperature.si + 15)),
  }
}

/** Room beside the outermost states, as a share of the width. */
const MARGIN = 0.04

/** The enthalpies that the plate spans, J/kg: from the liquid at the bottom to the hottest vapour there. */
export function enthalpySpan(
  refrigerant: Refrigerant,
  { bottom_Pa, hottest_K }: Window,
  { points }: CyclePoints,
): readonly [number, number] {
  const bottom = saturationAtPressure(refrigerant, pascal(bottom_Pa))
  const hottest = stateAt(refrigerant, pascal(bottom_Pa), kelvin(hottest_K))
  const states = [
    ...points.map(({ state }) => state.enthalpy),
    ...(bottom.ok ? [bottom.value.bubble.enthalpy_J_kg, bottom.value.dew.enthalpy_J_kg] : []),
    ...(hottest.ok ? [hottest.value.enthalpy_J_kg] : []),
  ]
  const [from, to] = [Math.min(...states), Math.max(...states)]
  return [from - MARGIN * (to - from), to]
}
