import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { cycle } from '../cycle.ts'
import { rootBetween } from '../root.ts'
import { SOUND, type System } from '../system.ts'

/** How much the coils' volumes may differ from those of other systems of their capacity. */
const LEAST = 0.3
const MOST = 3.5

/**
 * Makes the model hold the nameplate charge at the rated state: without a receiver by scaling the volumes of both
 * coils; with one by the level in it, for which the condenser is made a little longer or shorter.
 */
export function fillVolumes(system: System): Result<System, Problem> {
  return system.receiver ? fillReceiver(system) : scaleCoils(system)
}

/** What it holds at the rated state; with a receiver, when given this much to hold. */
const chargeOf = (system: System, given_kg = system.rated.charge_kg) =>
  cycle(system, system.rated.conditions, { ...SOUND, charge_kg: given_kg }, system.rated.unknowns).charge_kg

function scaleCoils(system: System): Result<System, Problem> {
  const scaled = (by: number): System => ({
    ...system,
    condenser: { ...system.condenser, volume_m3: system.condenser.volume_m3 * by },
    evaporator: { ...system.evaporator, volume_m3: system.evaporator.volume_m3 * by },
  })
  // The charge is linear in the coils' volumes.
  const [empty, whole] = [chargeOf(scaled(0)), chargeOf(system)]
  const by = (system.rated.charge_kg - empty) / (whole - empty)
  if (by >= LEAST && by <= MOST) return ok(scaled(by))
  const outside = empty - system.inventory.offset_kg
  const share = system.inventory.offset_kg / system.rated.charge_kg
  const charge = (scale: number) => (outside + scale * (whole - empty)) / (1 - share)
  return fail(refused(system, charge(LEAST), charge(MOST)))
}

function fillReceiver(system: System): Result<System, Problem> {
  const lengthened = (ln: number): System => {
    const by = Math.exp(ln)
    const { condenser } = system
    return {
      ...system,
      condenser: {
        ...condenser,
        airUa_W_K: condenser.airUa_W_K * by,
        twoPhaseUa_W_K: condenser.twoPhaseUa_W_K * by,
        vapourUa_W_K: condenser.vapourUa_W_K * by,
        liquidUa_W_K: condenser.liquidUa_W_K * by,
      },
    }
  }
  const missing = (ln: number) => (chargeOf(lengthened(ln)) - system.rated.charge_kg) / system.rated.charge_kg
  const ln = rootBetween(missing, -FINE, FINE, 1e-12)
  return ln === undefined
    ? fail(refused(system, chargeOf(system, 0), chargeOf(system, ANY_MORE_KG)))
    : ok(lengthened(ln))
}

/** A receiver that is neither empty nor full is level within this change of its condenser. */
const FINE = 0.03
const ANY_MORE_KG = 1e6

function refused(system: System, min: number, max: number): Problem {
  return { kind: 'out-of-range', field: 'nameplate charge', value: system.rated.charge_kg, min, max, unit: 'kg' }
}
