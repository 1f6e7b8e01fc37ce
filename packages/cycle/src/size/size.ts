import { fail, type Problem, type Result } from '@chargewright/quantity'
import { compressor } from '../components/compressor.ts'
import { liquidLine } from '../components/liquid-line.ts'
import { type SuctionLine, suctionLine } from '../components/suction-line.ts'
import type { Saturated } from '../refrigerant/properties.ts'
import { conditions, type System } from '../system.ts'
import { fillVolumes } from './fill-volumes.ts'
import { type Habits, habitsOf } from './habits.ts'
import type { Nameplate } from './nameplate.ts'
import { nameplateProblem } from './nameplate-problem.ts'
import { ratingPoint } from './rating-point.ts'
import { sizeCondenser, sizeEvaporator } from './size-coil.ts'
import { sizeCompressor } from './size-compressor.ts'
import { sizeDevice } from './size-device.ts'

/** Bores of common line sets: 5/16 in liquid and 5/8 in suction up to 4 kW, growing with the square root of the capacity. */
const LIQUID_BORE_M2_W = 5.2e-9
const SUCTION_BORE_M2_W = 21e-9
const TUBE = { massFlux: 180, diameter_m: 0.008 }

/**
 * The twin of a system: a model whose state at the rating conditions and nameplate charge is the one on its nameplate.
 * Where the nameplate is silent the habits of such systems fill in; where it contradicts itself it is refused with
 * the figure, and the range within which it would be believed.
 *
 * Every unknown is found in closed form or by one bracketed root, going once around the circuit from known states.
 *
 * @param habits those of its application; others for a system of the same nameplate that was designed differently
 */
export function size(
  plate: Nameplate,
  habits: Habits = habitsOf(plate.application, plate.boxTemperature_K),
): Result<System, Problem> {
  const problem = nameplateProblem(plate)
  if (problem) return fail(problem)
  const subcooling = plate.receiver ? 0 : (plate.subcooling_K ?? habits.subcooling_K)
  const at = conditions(habits.outdoor_K, habits.indoor_K, habits.indoorWetBulb_K)
  if (!at.ok) return at
  const point = ratingPoint(plate, habits, subcooling)
  if (!point.ok) return point

  const { properties, capacity_W } = plate
  const { evaporating, condensing } = point.value
  const isFixed = plate.device === 'fixed-orifice' || plate.device === 'capillary'
  const superheat = plate.superheat_K ?? (isFixed ? habits.superheat_K.fixed : habits.superheat_K.valve)
  const length = plate.lineLength_m ?? habits.lineLength_m

  const liquidEnthalpy = properties.liquidEnthalpy(condensing.bubble_K - subcooling)
  const suction = properties.saturated((1 - SUCTION_DROP) * evaporating.pressure_Pa)
  const loss_W_K = LINE_LOSS_W_MK * length + (plate.receiver ? RECEIVER_LOSS * capacity_W : 0)
  const lost_W = loss_W_K * (condensing.bubble_K - subcooling - habits.outdoor_K)
  const taken_W = capacity_W + point.value.indoorFan_W - lost_W
  const suctionSide = (gasSuperheat: number) =>
    atSuction(properties, suction, evaporating, gasSuperheat, liquidEnthalpy, taken_W, length, capacity_W, habits)
  let gasSuperheat = superheat
  if (!isFixed) {
    for (let i = 0; i < LINE_STEPS; i++) gasSuperheat += superheat - suctionSide(gasSuperheat).coilSuperheat
  }
  const { gasEnthalpy, gas, flow, line, coilOutlet, coilSuperheat } = suctionSide(gasSuperheat)

  const machine = sizeCompressor(plate, habits, point.value, suction, gas, gasEnthalpy, flow)
  if (!machine.ok) return machine
  const pumped = compressor(machine.value, properties, suction, condensing, gas, gasEnthalpy, 0)
  const hot = sizeCondenser(plate, habits, point.value, at.value, pumped.dischargeEnthalpy_J_kg, liquidEnthalpy, flow)
  if (!hot.ok) return hot

  const liquid = {
    volume_m3: LIQUID_BORE_M2_W * capacity_W * length,
    drierVolume_m3: DRIER_M3_W * capacity_W,
    drop_Pa: (plate.receiver ? LIQUID_DROP_BEHIND_RECEIVER : LIQUID_DROP) * condensing.pressure_Pa,
    ratedFlow_kg_s: flow,
    loss_W_K,
  }
  const { inlet, outletEnthalpy_J_kg: coilInlet } = liquidLine(
    liquid,
    properties,
    condensing,
    liquidEnthalpy,
    flow,
    0,
    habits.outdoor_K,
  )
  const cold = sizeEvaporator(plate, habits, point.value, at.value, coilInlet, coilOutlet, flow)
  if (!cold.ok) return cold
  const device = sizeDevice(plate.device, properties, inlet, evaporating.pressure_Pa, coilSuperheat, flow)
  if (!device) {
    const accepted = 'a capacity for which a fixed orifice of 0.2 mm to 8 mm passes the flow'
    return fail({ kind: 'unsolved', field: 'metering device', value: `${capacity_W} W`, accepted })
  }

  const gas_m3_W = GAS_VOLUMES[plate.compressorType ?? habits.compressorType]
  const vessel = plate.charge_kg / condensing.liquidDensity_kg_m3
  const system: System = {
    properties,
    compressor: machine.value,
    condenser: hot.value,
    liquidLine: liquid,
    ...(plate.receiver ? { receiver: { volume_m3: plate.receiver.volume_m3 ?? RECEIVER_SHARE * vessel } } : {}),
    device,
    evaporator: cold.value,
    suctionLine: line,
    ...(plate.accumulator ? { accumulator: { volume_m3: ACCUMULATOR_SHARE * vessel, bleed: 0.1 } } : {}),
    inventory: {
      voidFraction: plate.voidFraction ?? 'baroczy',
      tube: TUBE,
      dischargeVolume_m3: gas_m3_W.discharge * capacity_W,
      shellVolume_m3: gas_m3_W.shell * capacity_W,
      offset_kg: habits.oilShare * plate.charge_kg,
    },
    rated: {
      conditions: at.value,
      charge_kg: plate.charge_kg,
      unknowns: {
        lnSuction: Math.log(suction.pressure_Pa),
        lnCondensing: Math.log(condensing.pressure_Pa),
        suctionEnthalpy_J_kg: gasEnthalpy,
      },
      flow_kg_s: flow,
      capacity_W,
      superheat_K: gas.temperature_K - suction.dew_K,
      subcooling_K: subcooling,
    },
    trips: {
      high_Pa: Math.min(properties.dewPressure(TRIP_K), TRIP_SHARE * properties.critical.pressure_Pa),
      low_Pa: properties.dewPressure(evaporating.dew_K - LOW_TRIP_K),
      frostIsNormal: plate.application === 'medium-temperature' || plate.application === 'low-temperature',
    },
  }
  return fillVolumes(system)
}

/** Flow and both ends of the suction line for a superheat at the compressor. */
function atSuction(
  properties: System['properties'],
  suction: Saturated,
  evaporating: Saturated,
  gasSuperheat: number,
  liquidEnthalpy: number,
  taken_W: number,
  length_m: number,
  capacity_W: number,
  { outdoor_K, lineGain_W_mK }: Habits,
) {
  const gasEnthalpy = superheated(properties, suction, gasSuperheat)
  const gas = properties.vapour(suction, gasEnthalpy)
  const gain_W_K = lineGain_W_mK * length_m
  const flow = (taken_W + gain_W_K * (outdoor_K - gas.temperature_K)) / (gasEnthalpy - liquidEnthalpy)
  const line: SuctionLine = {
    volume_m3: SUCTION_BORE_M2_W * capacity_W * length_m,
    drop_Pa: evaporating.pressure_Pa - suction.pressure_Pa,
    ratedFlow_kg_s: flow,
    ratedDensity_kg_m3: gas.density_kg_m3,
    gain_W_K,
  }
  const coilOutlet = suctionLine(line, suction, gas, gasEnthalpy, flow, outdoor_K).evaporatorOutletEnthalpy_J_kg
  const coilSuperheat = properties.vapour(evaporating, coilOutlet).temperature_K - evaporating.dew_K
  return { gasEnthalpy, gas, flow, line, coilOutlet, coilSuperheat }
}

/** Enthalpy of vapour this far above its dew point, by Newton's method: the slope is nearly constant. */
function superheated(properties: System['properties'], at: Saturated, superheat: number): number {
  let above = at.vapourHeat_J_kgK * superheat
  for (let i = 0; i < 8; i++) {
    const reached = properties.vapour(at, at.vapourEnthalpy_J_kg + above).temperature_K - at.dew_K
    above += at.vapourHeat_J_kgK * (superheat - reached)
  }
  return at.vapourEnthalpy_J_kg + above
}

/**
 * Lines of the common sizes lose about this share of the pressure, the liquid line with its drier; behind a receiver,
 * where no subcooling is left to spend on it, a wider one is chosen: *common practice*.
 */
const SUCTION_DROP = 0.015
const LIQUID_DROP = 0.02
const LIQUID_DROP_BEHIND_RECEIVER = 0.005
const LINE_STEPS = 4
/** Bare liquid line of about 10 mm, and the shell of a receiver, W/K per W of cooling. */
const LINE_LOSS_W_MK = 0.3
const RECEIVER_LOSS = 2.5e-4
const DRIER_M3_W = 0.02e-6
/**
 * Gas in and beside the compressor, m³ per W of cooling: the shell of most scroll and reciprocating compressors stands at
 * suction pressure, that of a rotary one at discharge pressure. *Common practice*.
 */
const GAS_VOLUMES = {
  scroll: { discharge: 0.04e-6, shell: 0.25e-6 },
  reciprocating: { discharge: 0.04e-6, shell: 0.25e-6 },
  rotary: { discharge: 0.2e-6, shell: 0.03e-6 },
} as const
/** A receiver holds the whole charge in 0.8 of its volume. */
const RECEIVER_SHARE = 1.25
const ACCUMULATOR_SHARE = 0.5
/** Common settings of the pressure switches, as a condensing temperature and below the rated evaporating one. */
const TRIP_K = 339
const TRIP_SHARE = 0.88
const LOW_TRIP_K = 28
