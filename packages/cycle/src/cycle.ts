import { accumulatorCharge } from './components/accumulator.ts'
import { type CompressorState, compressor } from './components/compressor.ts'
import { type CondenserState, condenser } from './components/condenser.ts'
import { type EvaporatorState, evaporator } from './components/evaporator.ts'
import { type LiquidLineState, liquidLine } from './components/liquid-line.ts'
import { receiver } from './components/receiver.ts'
import { suctionLine } from './components/suction-line.ts'
import { deviceFlow } from './devices/device.ts'
import type { Saturated } from './refrigerant/properties.ts'
import type { Conditions, Health, System, Unknowns } from './system.ts'

/** Every state around the circuit for one set of unknowns, solved or not. */
export interface Cycle {
  readonly suction: Saturated
  /** At the partial pressure of the refrigerant. */
  readonly condensing: Saturated
  /** At the pressure that a gauge shows, any gas that does not condense included. */
  readonly discharge: Saturated
  readonly evaporating: Saturated
  readonly suctionEnthalpy_J_kg: number
  readonly compressor: CompressorState
  readonly condenser: CondenserState
  /** Undefined without a receiver. */
  readonly receiverLevel: number | undefined
  readonly liquidLine: LiquidLineState
  readonly opening: number
  readonly evaporator: EvaporatorState
  readonly charge_kg: number
  readonly residuals: Residuals
}

/** Each is zero in a steady state, and of order one where a state makes no sense. */
export interface Residuals {
  /** Device flow minus compressor flow, over the rated flow. */
  readonly flow: number
  /** Enthalpy that the coil gives minus that which the suction line needs, over 100 kJ/kg. */
  readonly evaporatorOutlet: number
  /** Refrigerant in the system minus the charge, over the rated charge. */
  readonly charge: number
}

const ENTHALPY_SCALE_J_KG = 1e5
const GAS_REFERENCE_K = 300

/** Goes once around the circuit. Nothing is iterated: every component is a formula in what stands before it. */
export function cycle(system: System, at: Conditions, health: Health, unknowns: Unknowns): Cycle {
  const { properties, inventory, rated } = system
  const condensingPressure = Math.exp(unknowns.lnCondensing)
  const suction = properties.saturated(Math.exp(unknowns.lnSuction))
  const condensing = properties.saturated(condensingPressure)
  const gas = (health.nonCondensable_Pa * condensing.dew_K) / GAS_REFERENCE_K
  const discharge = gas === 0 ? condensing : properties.saturated(condensingPressure + gas)

  const { suctionEnthalpy_J_kg } = unknowns
  const drawn = properties.vapour(suction, suctionEnthalpy_J_kg)
  const pumped = compressor(system.compressor, properties, suction, discharge, drawn, suctionEnthalpy_J_kg, health.wear)
  const flow = pumped.flow_kg_s
  const line = suctionLine(system.suctionLine, suction, drawn, suctionEnthalpy_J_kg, flow, at.outdoor.dryBulb_K)
  const evaporating = properties.saturated(line.evaporatorPressure_Pa)

  const { voidFraction } = inventory
  const { diameter_m, massFlux } = inventory.tube
  const tube = { diameter_m, massFlux: (massFlux * flow) / rated.flow_kg_s }
  const hot = condenser(
    system.condenser,
    properties,
    condensing,
    pumped.dischargeEnthalpy_J_kg,
    flow,
    at.outdoor,
    health.outdoorAirShare,
    voidFraction,
    tube,
  )
  const liquid = liquidLine(
    system.liquidLine,
    properties,
    discharge,
    hot.outletEnthalpy_J_kg,
    flow,
    health.restriction_Pa,
    at.outdoor.dryBulb_K,
  )
  const outlet = properties.vapour(evaporating, line.evaporatorOutletEnthalpy_J_kg)
  const superheat = outlet.temperature_K - evaporating.dew_K
  const metered = deviceFlow(
    system.device,
    properties,
    liquid.inlet,
    evaporating.pressure_Pa,
    superheat,
    flow / health.deviceShare,
  )
  const cold = evaporator(
    system.evaporator,
    evaporating,
    liquid.outletEnthalpy_J_kg,
    outlet.density_kg_m3,
    flow,
    at.indoor,
    at.saturatedAir,
    health.indoorAirShare,
    voidFraction,
    tube,
  )

  const carried = suction.vapourEnthalpy_J_kg - suctionEnthalpy_J_kg
  const liquidShare = carried / (suction.vapourEnthalpy_J_kg - suction.liquidEnthalpy_J_kg)
  const elsewhere_kg =
    hot.charge_kg +
    liquid.charge_kg +
    cold.charge_kg +
    line.charge_kg +
    (system.accumulator ? accumulatorCharge(system.accumulator, suction, drawn.density_kg_m3, liquidShare) : 0) +
    inventory.dischargeVolume_m3 * condensing.vapourDensity_kg_m3 +
    inventory.shellVolume_m3 * drawn.density_kg_m3 +
    inventory.offset_kg
  const stored =
    system.receiver && receiver(system.receiver, condensing, hot.liquidShare, health.charge_kg - elsewhere_kg)
  const charge_kg = elsewhere_kg + (stored?.charge_kg ?? 0)

  return {
    suction,
    condensing,
    discharge,
    evaporating,
    suctionEnthalpy_J_kg,
    compressor: pumped,
    condenser: hot,
    receiverLevel: stored?.level,
    liquidLine: liquid,
    opening: metered.opening,
    evaporator: cold,
    charge_kg,
    residuals: {
      flow: (metered.flow_kg_s * health.deviceShare - flow) / rated.flow_kg_s,
      evaporatorOutlet: (cold.outletEnthalpy_J_kg - line.evaporatorOutletEnthalpy_J_kg) / ENTHALPY_SCALE_J_KG,
      charge: (charge_kg - health.charge_kg) / rated.charge_kg,
    },
  }
}
