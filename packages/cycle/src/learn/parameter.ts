import { AIR_EXPONENT } from '../components/coil.ts'
import { cycle } from '../cycle.ts'
import { type Health, SOUND, type System } from '../system.ts'

/**
 * What is uncertain about a system sized from its nameplate. Each is the natural logarithm of a factor on the sized
 * value, 0 as sized; `volume` scales both coils' volumes while the inventory's offset keeps the rated state at the
 * nameplate charge: together they are the offset and the slope of the charge.
 */
export const PARAMETERS = {
  charge: { sd: 0.25, meaning: 'charge in the system at the first readings, over the nameplate charge' },
  device: { sd: 0.04, meaning: 'flow of the expansion device' },
  sweep: { sd: 0.04, meaning: 'displacement of the compressor' },
  efficiency: { sd: 0.06, meaning: 'isentropic efficiency of the compressor' },
  condenser: { sd: 0.12, meaning: 'conductance of the condenser' },
  evaporator: { sd: 0.12, meaning: 'conductance of the evaporator' },
  outdoorAir: { sd: 0.1, meaning: 'airflow through the condenser' },
  indoorAir: { sd: 0.08, meaning: 'airflow through the evaporator' },
  volume: { sd: 0.2, meaning: 'volume of the coils: how fast the readings answer to charge' },
} as const satisfies Readonly<Record<string, { readonly sd: number; readonly meaning: string }>>

export type ParameterName = keyof typeof PARAMETERS

export const PARAMETER_NAMES = Object.keys(PARAMETERS) as readonly ParameterName[]

export type Parameters = Readonly<Record<ParameterName, number>>

export const AS_SIZED = Object.fromEntries(PARAMETER_NAMES.map((name) => [name, 0])) as Parameters

/** The system that these parameters describe. */
export function adjusted(system: System, parameters: Parameters): System {
  const by = (name: ParameterName) => Math.exp(parameters[name])
  const { compressor, condenser, evaporator } = system
  const scaledCoil = <C extends System['condenser']>(coil: C, conductance: number, air: number): C => ({
    ...coil,
    airUa_W_K: coil.airUa_W_K * conductance * air ** AIR_EXPONENT,
    twoPhaseUa_W_K: coil.twoPhaseUa_W_K * conductance,
    vapourUa_W_K: coil.vapourUa_W_K * conductance,
    liquidUa_W_K: coil.liquidUa_W_K * conductance,
    airflow_kg_s: coil.airflow_kg_s * air,
    volume_m3: coil.volume_m3 * by('volume'),
  })
  const changed: System = {
    ...system,
    compressor:
      compressor.kind === 'volumetric'
        ? {
            ...compressor,
            sweep_m3_s: compressor.sweep_m3_s * by('sweep'),
            bestEfficiency: compressor.bestEfficiency * by('efficiency'),
            constant_W: (compressor.constant_W * by('sweep')) / by('efficiency'),
          }
        : {
            ...compressor,
            flowFactor: compressor.flowFactor * by('sweep'),
            powerFactor: (compressor.powerFactor * by('sweep')) / by('efficiency'),
          },
    condenser: scaledCoil(condenser, by('condenser'), by('outdoorAir')),
    evaporator: scaledCoil(evaporator, by('evaporator'), by('indoorAir')),
  }
  return parameters.volume === 0 ? changed : anchored(system, changed)
}

/** The health of the system at a charge, its device as the parameters have it. */
export function healthOf(system: System, parameters: Parameters, added_kg: number): Health {
  return {
    ...SOUND,
    charge_kg: Math.max(
      system.rated.charge_kg * Math.exp(parameters.charge) + added_kg,
      LEAST * system.rated.charge_kg,
    ),
    deviceShare: Math.exp(parameters.device),
  }
}

/** A running system holds more than this share of its charge. */
const LEAST = 0.2

/** Gives the offset back what other volumes took at the rated state, so that the nameplate charge stays right. */
function anchored(sized: System, changed: System): System {
  const { rated } = sized
  const volumesOnly: System = {
    ...sized,
    condenser: { ...sized.condenser, volume_m3: changed.condenser.volume_m3 },
    evaporator: { ...sized.evaporator, volume_m3: changed.evaporator.volume_m3 },
  }
  const { charge_kg } = cycle(volumesOnly, rated.conditions, { ...SOUND, charge_kg: rated.charge_kg }, rated.unknowns)
  const { inventory } = changed
  const offset_kg = inventory.offset_kg + rated.charge_kg - charge_kg
  return { ...changed, inventory: { ...inventory, offset_kg } }
}
