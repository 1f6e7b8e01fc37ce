import { kelvin, pascal } from '@chargewright/quantity'
import { type Refrigerant, saturationAtPressure, saturationAtTemperature, stateAt } from '@chargewright/refrigerant'
import type { PlateState } from './cycle-points.ts'
import type { Window } from './saturation-lines.ts'

const GLIDE_NODES = 5
/** Halvings of a stretch, at most: 2⁶ pieces. */
const MOST_HALVINGS = 6
/** As many in any case, so that a stretch that bends one way and back is not taken for a straight one. */
const LEAST_HALVINGS = 2
/** How far the line may stand off its chord, as a share of the enthalpy of evaporation: less than a line is wide. */
const STRAIGHT = 0.005

/** The states of one temperature, from the top of the window to its bottom: liquid, across the dome, vapour. */
export function isotherm(refrigerant: Refrigerant, T: number, { bottom_Pa, top_Pa }: Window): readonly PlateState[] {
  const stateOf = (p: number): PlateState | undefined => {
    const at = stateAt(refrigerant, pascal(p), kelvin(T))
    return at.ok ? { enthalpy: at.value.enthalpy_J_kg, pressure: p } : undefined
  }
  const near = STRAIGHT * latentHeat(refrigerant, bottom_Pa)
  const along = (from: number, to: number) => overGap(curve(stateOf, from, to, near), stateOf)
  const lines = saturationAtTemperature(refrigerant, kelvin(T))
  if (!lines.ok) return along(top_Pa, bottom_Pa)
  const { bubble, dew } = lines.value
  const at = ({ enthalpy_J_kg, pressure_Pa }: typeof bubble) => ({ enthalpy: enthalpy_J_kg, pressure: pressure_Pa })
  const across = Array.from({ length: GLIDE_NODES }, (_, i) =>
    stateOf(bubble.pressure_Pa * (dew.pressure_Pa / bubble.pressure_Pa) ** ((i + 1) / (GLIDE_NODES + 1))),
  ).flatMap((state) => state ?? [])
  return [
    ...along(top_Pa, bubble.pressure_Pa),
    at(bubble),
    ...(refrigerant.kind === 'blend' ? across : []),
    at(dew),
    ...(dew.pressure_Pa > bottom_Pa ? along(dew.pressure_Pa, bottom_Pa) : []),
  ]
}

type StateOf = (p: number) => PlateState | undefined

/** The states between two pressures, closer together where the line bends, and up to the edge of where none is known. */
function curve(stateOf: StateOf, from: number, to: number, near: number): readonly PlateState[] {
  const isStraight = (a?: PlateState, middle?: PlateState, b?: PlateState) =>
    a && middle && b && Math.abs(middle.enthalpy - (a.enthalpy + b.enthalpy) / 2) < near
  const between = (low: number, high: number, a?: PlateState, b?: PlateState, halvings = 0): readonly PlateState[] => {
    if (halvings === MOST_HALVINGS) return []
    const p = Math.sqrt(low * high)
    const middle = stateOf(p)
    const known = middle ? [middle] : []
    // Within the gap there is nothing to look for, and to be refused there takes long.
    if (halvings >= LEAST_HALVINGS && (isStraight(a, middle, b) || !(a || middle || b))) return known
    return [...between(low, p, a, middle, halvings + 1), ...known, ...between(p, high, middle, b, halvings + 1)]
  }
  const [a, b] = [stateOf(from), stateOf(to)]
  return [...(a ? [a] : []), ...between(from, to, a, b), ...(b ? [b] : [])]
}

const GAP_NODES = 12
/** Neighbours that are further apart than the finest stretch may have a gap between them. */
const GAP = 1.02

/**
 * The stretch too near the critical point for the equations to be asked is drawn on and not computed: a cubic in the
 * logarithm of the pressure that leaves both sides in their own direction, kept from turning back (Fritsch and Carlson
 * 1980).
 */
function overGap(states: readonly PlateState[], stateOf: StateOf): readonly PlateState[] {
  const u = ({ pressure }: PlateState) => Math.log(pressure)
  const slope = (a: PlateState, b: PlateState) => (b.enthalpy - a.enthalpy) / (u(b) - u(a))
  return states.flatMap((a, i) => {
    const [before, b, after] = [states[i - 1], states[i + 1], states[i + 2]]
    if (!before || !b || !after || a.pressure / b.pressure < GAP) return [a]
    if (stateOf(Math.sqrt(a.pressure * b.pressure))) return [a]
    const chord = slope(a, b)
    const [start, end] = [slope(before, a), slope(b, after)].map(
      (own) => chord * Math.min(Math.max(own / chord, 0), 3),
    ) as [number, number]
    const width = u(b) - u(a)
    return [
      a,
      ...Array.from({ length: GAP_NODES - 1 }, (_, n) => {
        const t = (n + 1) / GAP_NODES
        const enthalpy =
          (1 + 2 * t) * (1 - t) ** 2 * a.enthalpy +
          t ** 2 * (3 - 2 * t) * b.enthalpy +
          width * t * (1 - t) * ((1 - t) * start - t * end)
        return { enthalpy, pressure: Math.exp(u(a) + t * width) }
      }),
    ]
  })
}

/** Enthalpy of evaporation at a pressure, J/kg: the measure of what can be seen on a plate. */
function latentHeat(refrigerant: Refrigerant, p: number): number {
  const at = saturationAtPressure(refrigerant, pascal(p))
  return at.ok ? at.value.dew.enthalpy_J_kg - at.value.bubble.enthalpy_J_kg : 0
}
