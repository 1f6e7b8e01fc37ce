import type { Air } from './air.ts'
import { volumeOf } from './coil.ts'
import { conductance } from './conductance.ts'
import type { Saturated } from './fluid.ts'
import { type CoilState, march } from './march.ts'
import { roomOf } from './room-of.ts'
import type { Unit } from './unit.ts'

export interface Condensed {
  readonly state: CoilState
  /** Saturation at the refrigerant's own pressure where it leaves, and the pressure that a gauge shows there. */
  readonly outlet: Saturated
  readonly outlet_Pa: number
}

/**
 * Gas that does not condense gathers in the condenser: refrigerant condenses at what is left of the pressure, and worse.
 * How much room the gas has is known only afterwards, hence the second march.
 */
export function condense(
  unit: Unit,
  inlet: Saturated,
  h: number,
  m: number,
  air: Air,
  airflow: number,
  airShare: number,
): Condensed {
  const { fluid, condenser } = unit
  const drop = (condenser.drop * m ** 1.75) / inlet.rhoVapour
  const fin = conductance(condenser, airShare)
  const under = (gas_Pa: number): Condensed => {
    const first = gas_Pa > 0 ? fluid.at(inlet.p_Pa - gas_Pa) : inlet
    const outlet = fluid.at(inlet.p_Pa - gas_Pa - drop)
    const film = 1 / (1 + (BLANKET * gas_Pa) / inlet.p_Pa)
    const state = march(condenser, first, outlet, h, m, air, airflow, fin, film)
    return { state, outlet, outlet_Pa: inlet.p_Pa - drop }
  }
  if (unit.gas_Pa === 0) return under(0)
  const amount = (unit.gas_Pa * roomOf(unit)) / 298
  const alone = (room: number) => Math.min((amount * inlet.dew_K) / (room + unit.dischargeLine_m3), 0.5 * inlet.p_Pa)
  let found = under(alone(0.7 * volumeOf(condenser)))
  for (let k = 0; k < 2; k++) found = under(alone(found.state.vapour_m3))
  return found
}

/** Loss of condensing film per share of gas. */
const BLANKET = 4
