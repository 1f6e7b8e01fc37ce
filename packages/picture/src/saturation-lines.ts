import { kelvin, pascal } from '@chargewright/quantity'
import { type Refrigerant, saturationAtTemperature, stateAt } from '@chargewright/refrigerant'
import type { PlateState } from './cycle-points.ts'

/** The part of a refrigerant's plane that a plate shows. */
export interface Window {
  readonly bottom_Pa: number
  readonly top_Pa: number
  readonly coldest_K: number
  readonly hottest_K: number
}

const NODES = 48

/** Bubble and dew line, from below the bottom of the window to where the equations end near the critical point. */
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
  const line = (which: 'bubble' | 'dew') =>
    both.map(({ [which]: { enthalpy_J_kg, pressure_Pa } }) => ({ enthalpy: enthalpy_J_kg, pressure: pressure_Pa }))
  return { bubble: line('bubble'), dew: line('dew') }
}

const LIQUID_NODES = 4
const GLIDE_NODES = 5
const VAPOUR_NODES = 20

/** The states of one temperature, from the top of the window to its bottom: liquid, across the dome, vapour. */
export function isotherm(refrigerant: Refrigerant, T: number, { bottom_Pa, top_Pa }: Window): readonly PlateState[] {
  const along = (from: number, to: number, nodes: number) =>
    Array.from({ length: nodes + 1 }, (_, i) => from * (to / from) ** (i / nodes)).flatMap((p) => {
      const at = stateAt(refrigerant, pascal(p), kelvin(T))
      return at.ok ? [{ enthalpy: at.value.enthalpy_J_kg, pressure: p }] : []
    })
  const lines = saturationAtTemperature(refrigerant, kelvin(T))
  if (!lines.ok) return along(top_Pa, bottom_Pa, LIQUID_NODES + VAPOUR_NODES)
  const { bubble, dew } = lines.value
  const at = ({ enthalpy_J_kg, pressure_Pa }: typeof bubble) => ({ enthalpy: enthalpy_J_kg, pressure: pressure_Pa })
  return [
    ...along(top_Pa, bubble.pressure_Pa, LIQUID_NODES),
    at(bubble),
    ...(refrigerant.kind === 'blend' ? along(bubble.pressure_Pa, dew.pressure_Pa, GLIDE_NODES) : []),
    at(dew),
    ...(dew.pressure_Pa > bottom_Pa ? along(dew.pressure_Pa, bottom_Pa, VAPOUR_NODES) : []),
  ]
}
