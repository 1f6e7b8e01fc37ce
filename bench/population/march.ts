import type { Air } from './air.ts'
import type { Coil } from './coil.ts'
import type { Saturated } from './fluid.ts'
import { marchSlab, slab } from './slab.ts'

export interface CoilState {
  readonly outlet_h: number
  readonly charge_kg: number
  /** Room that vapour takes in it, m³. */
  readonly vapour_m3: number
  /** Into the refrigerant, negative in a condenser. */
  readonly heat_W: number
  readonly airOut: Air
}

/**
 * Steady state by marching along the refrigerant: in each cell local films by phase and quality, air as it arrives
 * there, the wall wet where it is colder than that air's dew point. A cell in which a phase ends is split at that place.
 * Counter-crossed rows are swept until the air between rows has settled.
 *
 * @param inlet at the pressure where refrigerant enters; `outlet` where it leaves
 * @param flow kg/s of refrigerant through the whole coil
 * @param air entering, `airflow` in kg/s, `fin` the air-side conductance of the whole coil, W/K
 * @param film factor on the two-phase film, below 1 where gas blankets it
 */
export function march(
  coil: Coil,
  inlet: Saturated,
  outlet: Saturated,
  h: number,
  flow: number,
  air: Air,
  airflow: number,
  fin: number,
  film: number,
): CoilState {
  let [outlet_h, charge, vapour, T, w] = [0, 0, 0, 0, 0]
  const n = coil.slabs.length
  for (const share of coil.slabs) {
    marchSlab(coil, inlet, outlet, h, flow / n, air, airflow * share, fin / n, film, 1 / n)
    outlet_h += slab.h / n
    charge += slab.charge
    vapour += slab.vapour
    T += share * slab.airT
    w += share * slab.airW
  }
  return { outlet_h, charge_kg: charge, vapour_m3: vapour, heat_W: flow * (outlet_h - h), airOut: { T_K: T, w } }
}
