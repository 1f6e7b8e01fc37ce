import { kelvin } from '@chargewright/quantity'
import { type Refrigerant, type Saturation, saturationAtTemperature } from '@chargewright/refrigerant'
import type { PlateState } from './cycle-points.ts'

/** The part of a refrigerant's plane that a plate shows. */
export interface Window {
  readonly bottom_Pa: number
  readonly top_Pa: number
  readonly coldest_K: number
  readonly hottest_K: number
}

const NODES = 48

/**
 * Bubble and dew line, from below the bottom of the window to the critical point, where they meet. The last stretch,
 * closer to that point than the equations are asked, is drawn on and not computed.
 */
export function saturationLines(
  refrigerant: Refrigerant,
  { coldest_K }: Window,
): { readonly bubble: readonly PlateState[]; readonly dew: readonly PlateState[] } {
  const end = 0.998 * refrigerant.critical.temperature_K
  const both = Array.from({ length: NODES + 1 }, (_, i) => {
    // Closer together towards the critical point, where the lines bend.
    const T = end - (end - coldest_K) * (1 - i / NODES) ** 2
    return saturationAtTemperature(refrigerant, kelvin(T))
  }).flatMap((at) => (at.ok ? [at.value] : []))
  const top = domeTop(refrigerant, both.slice(-2))
  const line = (which: 'bubble' | 'dew') => [
    ...both.map(({ [which]: { enthalpy_J_kg, pressure_Pa } }) => ({ enthalpy: enthalpy_J_kg, pressure: pressure_Pa })),
    ...top[which],
  ]
  return { bubble: line('bubble'), dew: line('dew') }
}

const TOP_NODES = 12

/**
 * The top of the dome above the last two computed states. The middle of the two lines goes on straight (the rectilinear
 * diameter of Cailletet and Mathias 1886), their distance shrinks by the power of the distance from the critical
 * temperature that those two states set, and the pressure of each goes straight to the critical one.
 */
function domeTop(
  { critical }: Refrigerant,
  last: readonly Saturation[],
): Record<'bubble' | 'dew', readonly PlateState[]> {
  const [before, end] = last.map(({ bubble, dew }) => ({
    below: critical.temperature_K - bubble.temperature_K,
    middle: (bubble.enthalpy_J_kg + dew.enthalpy_J_kg) / 2,
    half: (dew.enthalpy_J_kg - bubble.enthalpy_J_kg) / 2,
    pressure: { bubble: bubble.pressure_Pa, dew: dew.pressure_Pa },
  }))
  if (!before || !end) return { bubble: [], dew: [] }
  const power = Math.log(before.half / end.half) / Math.log(before.below / end.below)
  const slope = (end.middle - before.middle) / (before.below - end.below)
  const towards = (which: 'bubble' | 'dew', side: -1 | 1) =>
    Array.from({ length: TOP_NODES }, (_, i) => {
      // Evenly in the width, which is what the eye follows.
      const width = 1 - (i + 1) / TOP_NODES
      const left = width ** (1 / power)
      return {
        enthalpy: end.middle + slope * end.below * (1 - left) + side * width * end.half,
        pressure: critical.pressure_Pa + left * (end.pressure[which] - critical.pressure_Pa),
      }
    })
  return { bubble: towards('bubble', -1), dew: towards('dew', 1) }
}
