import { airDensity, airOf, CP_AIR, dewPointOf } from './air.ts'
import { pump } from './compressor-law.ts'
import { condense } from './condense.ts'
import { conductance } from './conductance.ts'
import { feed } from './device-law.ts'
import { blow } from './fan.ts'
import { type Saturated, temperatureOf } from './fluid.ts'
import { inAccumulator } from './in-accumulator.ts'
import { inOil } from './in-oil.ts'
import { march } from './march.ts'
import { rootOfThree } from './root-of-three.ts'
import type { Unit, Weather } from './unit.ts'

/** What is really so in a running unit; pressures absolute at the places where gauges are put. */
export interface Running {
  readonly unknowns: Unknowns
  readonly charge_kg: number
  readonly flow: number
  readonly suction: Saturated
  readonly suction_h: number
  readonly suction_K: number
  readonly discharge_Pa: number
  readonly discharge_K: number
  readonly liquid_Pa: number
  readonly liquid_K: number
  readonly drierInlet_K: number
  readonly drierOutlet_K: number
  readonly condenserLeaving_K: number
  readonly supply_K: number
  readonly compressor_W: number
  readonly power_W: number
  /** Net of the indoor fan's heat. */
  readonly capacity_W: number
  readonly superheat_K: number
  /** Against the pressure in the liquid line, as gauges show it. */
  readonly subcooling_K: number
  readonly evaporating_K: number
  readonly condensing_K: number
  readonly coilSuperheat_K: number
  /** Of the gas that reaches the compressor; below 1 liquid comes with it. */
  readonly suctionQuality: number
}

/** ln of suction pressure and of discharge pressure, suction enthalpy in units of 100 kJ/kg. */
export type Unknowns = readonly [lnSuction: number, lnDischarge: number, suction: number]

/**
 * The steady state in this weather that holds this charge.
 *
 * @returns undefined where none is found from the start given
 */
export function operate(unit: Unit, weather: Weather, charge_kg: number, start: Unknowns): Running | undefined {
  const around = surroundings(unit, weather)
  const residuals = (u: Unknowns) => {
    const { imbalance, outletOff, running } = once(unit, around, u)
    return [imbalance, outletOff, running.charge_kg / charge_kg - 1] as const
  }
  const found = rootOfThree(residuals, start)
  return found && once(unit, around, found).running
}

/** The state of these unknowns, and how far it is from steady: flows through device and compressor, outlet enthalpy. */
export interface Attempt {
  readonly running: Running
  readonly imbalance: number
  readonly outletOff: number
}

export type Surroundings = ReturnType<typeof surroundings>

export function surroundings(unit: Unit, weather: Weather) {
  const indoor = airOf(weather.returnAir_K, weather.returnWetBulb_K)
  return {
    outdoor: { T_K: weather.outdoor_K, w: 0.008 },
    indoor,
    inside: blow(unit.evaporatorFan, dewPointOf(indoor.w) > WET_FROM_K),
    outside: blow(unit.condenserFan, false),
  }
}

/** Comfort coils run a little below this. */
const WET_FROM_K = 283

export function once(unit: Unit, { outdoor, indoor, inside, outside }: Surroundings, u: Unknowns): Attempt {
  const { fluid, liquidLine, suctionLine } = unit
  const [suction_Pa, discharge_Pa, h] = [Math.exp(u[0]), Math.exp(u[1]), 1e5 * u[2]]
  const suction = fluid.at(suction_Pa)
  const discharge = fluid.at(discharge_Pa)
  const pumped = pump(unit.compressor, fluid, suction, h, discharge_Pa)
  const m = pumped.flow

  const hotAir = airDensity(outdoor.T_K + 8) * outside.flow_m3_s
  const hot = condense(unit, discharge, pumped.discharge_h, m, outdoor, hotAir, outside.share)
  const liquid_Pa = hot.outlet_Pa
  const liquid = fluid.at(liquid_Pa)
  const liquid_K = Math.min(temperatureOf(hot.outlet, hot.state.outlet_h), liquid.bubble_K)
  const h3 = hot.state.outlet_h
  const specific = (m * m) / liquid.rhoLiquid
  const afterDrier_Pa = Math.max(liquid_Pa - liquidLine.drierDrop * specific, 1.05 * suction_Pa)
  const h4 = h3 - (liquidLine.loss_W_K * (liquid_K - outdoor.T_K)) / m
  const device_Pa = Math.max(afterDrier_Pa - (liquidLine.drop + liquidLine.strainerDrop) * specific, 1.02 * suction_Pa)
  const inlet = fluid.at(device_Pa)

  const suctionDensity = fluid.density(suction_Pa, h)
  const outlet = fluid.at(suction_Pa + (suctionLine.drop * m * m) / suctionDensity)
  const coilDrop = (unit.evaporator.drop * m ** 1.75) / outlet.rhoVapour
  const coilInlet = fluid.at(outlet.p_Pa + coilDrop)
  const coldAir = (airDensity(indoor.T_K) * inside.flow_m3_s) / (1 + indoor.w)
  const cold = march(
    unit.evaporator,
    coilInlet,
    outlet,
    h4,
    m,
    indoor,
    coldAir,
    conductance(unit.evaporator, inside.share),
    1,
  )
  const outlet_K = temperatureOf(outlet, cold.outlet_h)
  const lineEnd = cold.outlet_h + (suctionLine.gain_W_K * (outdoor.T_K - outlet_K)) / m
  const fed = feed(unit.device, {
    fluid,
    inlet,
    h: h4,
    downstream_Pa: coilInlet.p_Pa,
    bulb_K: outlet_K,
    air_K: outdoor.T_K,
    equaliser_Pa: outlet.p_Pa,
  })

  const suction_K = temperatureOf(suction, h)
  const quality = (h - suction.hLiquid) / (suction.hVapour - suction.hLiquid)
  const discharge_K = temperatureOf(discharge, pumped.discharge_h)
  const capacity_W = cold.heat_W - inside.power_W
  const power_W = pumped.power_W + inside.power_W + outside.power_W
  const running: Running = {
    unknowns: u,
    charge_kg:
      hot.state.charge_kg +
      cold.charge_kg +
      liquidLine.volume_m3 * fluid.density(0.5 * (liquid_Pa + device_Pa), h4) +
      liquidLine.drier_m3 * fluid.density(liquid_Pa, h3) +
      (suctionLine.volume_m3 + unit.shell_m3) * suctionDensity +
      unit.dischargeLine_m3 * (discharge.rhoVapour / (1 + discharge.swell * (pumped.discharge_h - discharge.hVapour))) +
      inAccumulator(unit, suction, suctionDensity, quality) +
      inOil(unit, suction_Pa, suction_K, discharge_K),
    flow: m,
    suction,
    suction_h: h,
    suction_K,
    discharge_Pa,
    discharge_K,
    liquid_Pa,
    liquid_K,
    drierInlet_K: Math.min(temperatureOf(liquid, h3), liquid_K),
    drierOutlet_K: Math.min(temperatureOf(fluid.at(afterDrier_Pa), h3), liquid_K),
    condenserLeaving_K: hot.state.airOut.T_K + outside.power_W / (hotAir * CP_AIR),
    supply_K: cold.airOut.T_K + inside.power_W / (coldAir * CP_AIR),
    compressor_W: pumped.power_W,
    power_W,
    capacity_W,
    superheat_K: suction_K - suction.dew_K,
    subcooling_K: liquid.bubble_K - liquid_K,
    evaporating_K: suction.dew_K,
    condensing_K: liquid.dew_K,
    coilSuperheat_K: outlet_K - outlet.dew_K,
    suctionQuality: quality,
  }
  return { running, imbalance: Math.log(fed / m), outletOff: (lineEnd - h) / 2e5 }
}
