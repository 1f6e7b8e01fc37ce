import { boxRegion, type RatingPolynomial } from '@chargewright/compressor'
import { describe, expect, it } from 'vitest'
import map from '../../test/data/compressor-map.json' with { type: 'json' }
import { plate, sized, tables } from '../../test/sample.ts'
import { habitsOf } from '../size/habits.ts'
import { accumulatorCharge } from './accumulator.ts'
import { compressor, type MappedCompressor } from './compressor.ts'
import { condenser } from './condenser.ts'
import { evaporator } from './evaporator.ts'
import { liquidLine } from './liquid-line.ts'
import { receiver } from './receiver.ts'
import { suctionLine } from './suction-line.ts'

const properties = tables('R-410A')
const system = sized(plate('fixed-orifice'))
const { rated } = system
const low = properties.saturated(Math.exp(rated.unknowns.lnSuction))
const high = properties.saturated(Math.exp(rated.unknowns.lnCondensing))
const hot = high.vapourEnthalpy_J_kg + 40e3
const tube = { massFlux: 180, diameter_m: 0.008 }
const { outdoor, indoor, saturatedAir } = rated.conditions

/** Suction and discharge dew points, °F, pressure ratios from 1.8 to 4.8. */
const MAP_POINTS = [
  [25, 95],
  [25, 130],
  [35, 80],
  [35, 110],
  [35, 145],
  [45, 95],
  [45, 120],
  [45, 145],
  [55, 95],
  [55, 130],
] as const

describe('compressor', () => {
  const kelvin = (F: number) => (F + 459.67) / 1.8
  const everywhere = boxRegion([200, 350], [250, 400])
  const polynomial = (
    what: RatingPolynomial['what'],
    unit: string,
    coefficients: readonly number[],
  ): RatingPolynomial => ({
    what,
    unit,
    coefficients,
    dewUnit: '°F',
    region: everywhere,
  })
  const mapped: MappedCompressor = {
    kind: 'map',
    flow: polynomial('mass flow', 'lb/h', map.flow),
    power: polynomial('power', 'W', map.power),
    flowFactor: 1,
    powerFactor: 1,
    superheat_K: map.superheat_F / 1.8,
    heatLoss: 0.08,
  }

  // Oracle: map.json, COMPUTED from READ coefficients.
  it.each(map.points)(
    '[oracle] a map at its own superheat gives its own flow and power at $suctionDew_F/$dischargeDew_F °F',
    (point) => {
      const suction = properties.saturated(properties.dewPressure(kelvin(point.suctionDew_F)))
      const discharge = properties.saturated(properties.dewPressure(kelvin(point.dischargeDew_F)))
      const enthalpy = suction.vapourEnthalpy_J_kg + suction.vapourHeat_J_kgK * mapped.superheat_K
      const gas = properties.vapour(suction, enthalpy)
      const { flow_kg_s, power_W } = compressor(mapped, properties, suction, discharge, gas, enthalpy, 0)
      expect(flow_kg_s / (point.flow_lb_h * (0.45359237 / 3600))).toBeCloseTo(1, 3)
      expect(power_W / point.power_W).toBeCloseTo(1, 3)
    },
  )

  it('[oracle] the law of a compressor known by one point has the efficiency of this map within 4 %, 1.8 to 4.8 in ratio', () => {
    const [bestEfficiency, bestRatio, bend] = [0.722, 2.6, habitsOf('comfort-cooling').efficiencyBend.scroll]
    for (const [suctionDew_F, dischargeDew_F] of MAP_POINTS) {
      const suction = properties.saturated(properties.dewPressure(kelvin(suctionDew_F)))
      const discharge = properties.saturated(properties.dewPressure(kelvin(dischargeDew_F)))
      const h = suction.vapourEnthalpy_J_kg + suction.vapourHeat_J_kgK * mapped.superheat_K
      const gas = properties.vapour(suction, h)
      const { flow_kg_s, power_W } = compressor(mapped, properties, suction, discharge, gas, h, 0)
      const onMap = (flow_kg_s * (properties.isentropic(discharge, gas.entropy_J_kgK) - h)) / power_W
      const byLaw = bestEfficiency / (1 + bend * Math.log(discharge.pressure_Pa / suction.pressure_Pa / bestRatio) ** 2)
      expect(Math.abs(byLaw / onMap - 1)).toBeLessThan(0.04)
    }
  })

  const enthalpy = rated.unknowns.suctionEnthalpy_J_kg
  const run = (wear: number) =>
    compressor(system.compressor, properties, low, high, properties.vapour(low, enthalpy), enthalpy, wear)

  it('[property] what leaves with the gas and through the shell is what came in', () => {
    const { flow_kg_s, power_W, dischargeEnthalpy_J_kg } = run(0)
    expect(flow_kg_s * (dischargeEnthalpy_J_kg - enthalpy)).toBeCloseTo(0.92 * power_W, 6)
  })

  it('[property] liquid boiling in the shell takes swept volume: wetter gas brings less vapour-making flow, without a step', () => {
    const { vapourEnthalpy_J_kg, liquidEnthalpy_J_kg } = low
    const at = (quality: number) => {
      const h = liquidEnthalpy_J_kg + quality * (vapourEnthalpy_J_kg - liquidEnthalpy_J_kg)
      return compressor(system.compressor, properties, low, high, properties.vapour(low, h), h, 0).flow_kg_s
    }
    // What evaporates in the coil is flow times quality.
    expect(0.9 * at(0.9)).toBeLessThan(0.97 * at(1))
    expect(at(1 - 1e-9) / at(1)).toBeCloseTo(1, 6)
  })

  it('[property] wear pumps less and makes the gas hotter', () => {
    expect(run(0.2).flow_kg_s).toBeLessThan(0.9 * run(0).flow_kg_s)
    expect(run(0.2).dischargeEnthalpy_J_kg).toBeGreaterThan(run(0).dischargeEnthalpy_J_kg)
  })
})

describe('condenser', () => {
  const run = (flow: number, share = 1) =>
    condenser(system.condenser, properties, high, hot, flow, outdoor, share, 'baroczy', tube)

  it('[property] its three stretches fill the tube, and the heat is what the refrigerant lost', () => {
    const { vapourShare, twoPhaseShare, liquidShare, heat_W, outletEnthalpy_J_kg } = run(rated.flow_kg_s)
    expect(vapourShare + twoPhaseShare + Math.max(liquidShare, 0)).toBeCloseTo(1, 12)
    expect(heat_W).toBeCloseTo(rated.flow_kg_s * (hot - outletEnthalpy_J_kg), 6)
  })

  it('[limit] hardly any flow leaves at the temperature of the air', () => {
    expect(properties.liquid(run(1e-3).outletEnthalpy_J_kg).temperature_K).toBeCloseTo(outdoor.dryBulb_K, 1)
  })

  it('[limit] too much flow leaves with vapour, without a step where the last bubble goes', () => {
    expect(run(3 * rated.flow_kg_s).outletEnthalpy_J_kg).toBeGreaterThan(high.liquidEnthalpy_J_kg)
    let [a, b] = [rated.flow_kg_s, 2 * rated.flow_kg_s]
    for (let i = 0; i < 60; i++) {
      const middle = (a + b) / 2
      if (run(middle).liquidShare > 0) a = middle
      else b = middle
    }
    expect(run(b).outletEnthalpy_J_kg - run(a).outletEnthalpy_J_kg).toBeLessThan(1)
  })
})

describe('evaporator', () => {
  const inlet = high.liquidEnthalpy_J_kg - 10e3
  const run = (flow: number, wetBulbOf = indoor) =>
    evaporator(
      system.evaporator,
      low,
      inlet,
      low.vapourDensity_kg_m3,
      flow,
      wetBulbOf,
      saturatedAir,
      1,
      'baroczy',
      tube,
    )

  it('[property] takes up what the refrigerant gains, floods with too much flow, and superheats to the air with little', () => {
    const { heat_W, outletEnthalpy_J_kg } = run(rated.flow_kg_s)
    expect(heat_W).toBeCloseTo(rated.flow_kg_s * (outletEnthalpy_J_kg - inlet), 6)
    expect(run(2 * rated.flow_kg_s).outletEnthalpy_J_kg).toBeLessThan(low.vapourEnthalpy_J_kg)
    const little = properties.vapour(low, run(0.02 * rated.flow_kg_s).outletEnthalpy_J_kg).temperature_K
    expect(Math.abs(little - indoor.dryBulb_K)).toBeLessThan(2)
  })

  it('[property] moister air of the same dry bulb gives more heat, and leaves cooled', () => {
    const drier = { ...indoor, enthalpy_J_kg: indoor.enthalpy_J_kg - 8e3 }
    expect(run(1.2 * rated.flow_kg_s, drier).heat_W).toBeLessThan(run(1.2 * rated.flow_kg_s).heat_W)
    expect(run(rated.flow_kg_s).leavingAir_K).toBeLessThan(indoor.dryBulb_K - 5)
  })
})

describe('lines and vessels', () => {
  it('[property] a restriction adds its drop at the rated flow, and never takes more than 85 % of the pressure', () => {
    const { liquidLine: line } = system
    const run = (restriction: number) =>
      liquidLine(
        line,
        properties,
        high,
        high.liquidEnthalpy_J_kg - 15e3,
        line.ratedFlow_kg_s,
        restriction,
        outdoor.dryBulb_K,
      ).drop_Pa
    expect((run(2e5) - run(0)) / 2e5).toBeCloseTo(0.95, 1)
    expect(run(1e9)).toBeLessThanOrEqual(0.85 * high.pressure_Pa)
  })

  it('[property] a suction line gives back the enthalpy with which the coil was left', () => {
    const enthalpy = rated.unknowns.suctionEnthalpy_J_kg
    const gas = properties.vapour(low, enthalpy)
    const { evaporatorOutletEnthalpy_J_kg } = suctionLine(system.suctionLine, low, gas, enthalpy, rated.flow_kg_s, 308)
    const warmed = rated.flow_kg_s * (enthalpy - evaporatorOutletEnthalpy_J_kg)
    expect(warmed).toBeCloseTo(system.suctionLine.gain_W_K * (308 - gas.temperature_K), 6)
  })

  it('[limit] a receiver is empty while vapour enters it and full when the condenser backs up', () => {
    const vessel = { volume_m3: 1e-3 }
    const half = 0.5e-3 * (high.liquidDensity_kg_m3 + high.vapourDensity_kg_m3)
    expect(receiver(vessel, high, -0.2, half).level).toBeLessThan(0.001)
    expect(receiver(vessel, high, 0.2, half).level).toBeGreaterThan(0.999)
    expect(receiver(vessel, high, 0.005, half)).toEqual({
      level: expect.closeTo(0.5, 9),
      charge_kg: expect.closeTo(half, 9),
    })
  })

  it('[limit] an accumulator holds gas only until liquid arrives', () => {
    const vessel = { volume_m3: 1e-3, bleed: 0.1 }
    expect(accumulatorCharge(vessel, low, 30, -0.1)).toBeCloseTo(0.03, 12)
    expect(accumulatorCharge(vessel, low, 30, 0.3)).toBeGreaterThan(0.5)
  })
})
