import { AIR_HEAT_J_KGK } from './air.ts'
import type { Cycle } from './cycle.ts'
import type { System } from './system.ts'

/** What gauges and thermometers on this system would show in the steady state, and what follows from it. Absolute Pa. */
export interface Readings {
  readonly suctionPressure_Pa: number
  readonly suctionTemperature_K: number
  /** At the compressor, against the dew point of the pressure there. */
  readonly superheat_K: number
  /** The same, and below the dew point the enthalpy that is lacking to it over the vapour's heat: negative when wet. */
  readonly dryness_K: number
  /** At the coil outlet. */
  readonly coilSuperheat_K: number
  readonly dischargePressure_Pa: number
  readonly dischargeTemperature_K: number
  /** At the condenser outlet, as the gauge there shows it. */
  readonly liquidPressure_Pa: number
  readonly liquidTemperature_K: number
  /** Against the bubble point of the liquid pressure; gas that does not condense makes it look large. */
  readonly subcooling_K: number
  /** After drier and liquid line, before the device. */
  readonly devicePressure_Pa: number
  readonly deviceTemperature_K: number
  readonly evaporating_K: number
  readonly condensing_K: number
  readonly leavingCondenserAir_K: number
  readonly supplyAir_K: number
  readonly compressorPower_W: number
  readonly power_W: number
  readonly capacity_W: number
  readonly cop: number
  readonly flow_kg_s: number
  /** Share of vapour in what the glass before the device shows, by volume; 0 is clear. */
  readonly glassVapour: number
}

export function readingsOf({ properties, condenser, evaporator }: System, c: Cycle): Readings {
  const gas = properties.vapour(c.suction, c.suctionEnthalpy_J_kg)
  const outletEnthalpy = c.evaporator.outletEnthalpy_J_kg
  const outlet = properties.vapour(c.evaporating, outletEnthalpy)
  const hot = properties.vapour(c.discharge, c.compressor.dischargeEnthalpy_J_kg)
  const liquid = temperatureOfLiquid(properties, c.condensing, c.condenser.outletEnthalpy_J_kg)
  const { inlet } = c.liquidLine
  const capacity_W = c.evaporator.heat_W - evaporator.fan_W
  const power_W = c.compressor.power_W + condenser.fan_W + evaporator.fan_W
  return {
    suctionPressure_Pa: c.suction.pressure_Pa,
    suctionTemperature_K: gas.temperature_K,
    superheat_K: gas.temperature_K - c.suction.dew_K,
    dryness_K:
      gas.temperature_K -
      c.suction.dew_K +
      Math.min(c.suctionEnthalpy_J_kg - c.suction.vapourEnthalpy_J_kg, 0) / c.suction.vapourHeat_J_kgK,
    coilSuperheat_K: outlet.temperature_K - c.evaporating.dew_K,
    dischargePressure_Pa: c.discharge.pressure_Pa,
    dischargeTemperature_K: hot.temperature_K,
    liquidPressure_Pa: c.discharge.pressure_Pa,
    liquidTemperature_K: liquid,
    subcooling_K: c.discharge.bubble_K - liquid,
    devicePressure_Pa: inlet.at.pressure_Pa,
    deviceTemperature_K:
      inlet.quality > 0
        ? temperatureOfLiquid(properties, inlet.at, inlet.enthalpy_J_kg)
        : inlet.at.bubble_K - inlet.subcooling_K,
    evaporating_K: c.evaporating.dew_K,
    condensing_K: c.condensing.dew_K,
    leavingCondenserAir_K: c.condenser.leavingAir_K + condenser.fan_W / (condenser.airflow_kg_s * AIR_HEAT_J_KGK),
    supplyAir_K: c.evaporator.leavingAir_K + evaporator.fan_W / (evaporator.airflow_kg_s * AIR_HEAT_J_KGK),
    compressorPower_W: c.compressor.power_W,
    power_W,
    capacity_W,
    cop: capacity_W / power_W,
    flow_kg_s: c.compressor.flow_kg_s,
    glassVapour: (inlet.quality * inlet.density_kg_m3) / inlet.at.vapourDensity_kg_m3,
  }
}

function temperatureOfLiquid(properties: System['properties'], at: Cycle['condensing'], enthalpy: number): number {
  if (enthalpy < at.liquidEnthalpy_J_kg) return properties.liquid(enthalpy).temperature_K
  const share = (enthalpy - at.liquidEnthalpy_J_kg) / (at.vapourEnthalpy_J_kg - at.liquidEnthalpy_J_kg)
  return at.bubble_K + Math.min(share, 1) * (at.dew_K - at.bubble_K)
}
