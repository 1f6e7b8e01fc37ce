import type { Properties, Saturated } from '../refrigerant/properties.ts'
import type { VapourState } from '../refrigerant/vapour-table.ts'
import { positivePart } from '../smooth.ts'

/** A compressor by its geometry and losses, or by its maker's ten coefficients. */
export type Compressor = VolumetricCompressor | MappedCompressor

export interface VolumetricCompressor {
  readonly kind: 'volumetric'
  /** Displacement times speed, m³/s. */
  readonly sweep_m3_s: number
  /** Re-expansion and leakage, over the sweep, per unit of (p₂/p₁ − 1). */
  readonly clearance: number
  /** Isentropic work over electric work at the best pressure ratio. */
  readonly bestEfficiency: number
  readonly bestRatio: number
  /** Share of the electric power that leaves through the shell. */
  readonly heatLoss: number
}

/** Ten coefficients over dew temperatures in K, in kg/s and W: see `fromMap` for a maker's own units. */
export interface MappedCompressor {
  readonly kind: 'map'
  readonly flow: TenCoefficients
  readonly power: TenCoefficients
  /** Superheat at which the map was measured, K. */
  readonly superheat_K: number
  readonly heatLoss: number
}

/** C₁ + C₂S + C₃D + C₄S² + C₅SD + C₆D² + C₇S³ + C₈DS² + C₉SD² + C₁₀D³ over dew temperatures S and D in °F or °C. */
export interface TenCoefficients {
  readonly c: readonly number[]
  readonly scale: 'F' | 'C'
  /** SI value of one unit of the result. */
  readonly unit: number
}

export interface CompressorState {
  readonly flow_kg_s: number
  readonly power_W: number
  readonly dischargeEnthalpy_J_kg: number
}

/**
 * @param gas the state at the suction enthalpy
 * @param wear share of the swept gas that leaks back hot, 0 when sound
 * @source map form and order of terms: AHRI 540; correction for another superheat, with 0.75 of the density ratio on
 *   the flow: Rice and Dabiri 1981, both READ in open heat-pump models. Efficiency falling with the square of the
 *   logarithm of the pressure ratio away from its best: *common practice* for a compressor known by one point only.
 */
export function compressor(
  machine: Compressor,
  properties: Properties,
  suction: Saturated,
  discharge: Saturated,
  gas: VapourState,
  suctionEnthalpy: number,
  wear: number,
): CompressorState {
  switch (machine.kind) {
    case 'volumetric':
      return volumetric(machine, properties, suction, discharge, gas, suctionEnthalpy, wear)
    case 'map':
      return mapped(machine, properties, suction, discharge, gas, suctionEnthalpy, wear)
  }
}

function volumetric(
  { sweep_m3_s, clearance, bestEfficiency, bestRatio, heatLoss }: VolumetricCompressor,
  properties: Properties,
  suction: Saturated,
  discharge: Saturated,
  gas: VapourState,
  suctionEnthalpy: number,
  wear: number,
): CompressorState {
  const ratio = discharge.pressure_Pa / suction.pressure_Pa
  const efficiency = bestEfficiency / (1 + 0.3 * Math.log(ratio / bestRatio) ** 2)
  const filling = positivePart(1 - clearance * (ratio - 1) - 0.1, 0.02) + 0.1
  const { leak, mixedEnthalpy, state } = leakBack(
    properties,
    suction,
    discharge,
    gas,
    suctionEnthalpy,
    efficiency,
    wear,
  )
  const swept = sweep_m3_s * filling * state.density_kg_m3
  const work = properties.isentropic(discharge, state.entropy_J_kgK) - mixedEnthalpy
  return finish(swept * (1 - leak), (swept * Math.max(work, 0)) / efficiency, suctionEnthalpy, heatLoss)
}

function mapped(
  { flow, power, superheat_K, heatLoss }: MappedCompressor,
  properties: Properties,
  suction: Saturated,
  discharge: Saturated,
  gas: VapourState,
  suctionEnthalpy: number,
  wear: number,
): CompressorState {
  const asMapped = suction.vapourEnthalpy_J_kg + suction.vapourHeat_J_kgK * superheat_K
  const mapState = properties.vapour(suction, asMapped)
  const mapWork = properties.isentropic(discharge, mapState.entropy_J_kgK) - asMapped
  const mapFlow = positivePart(polynomial(flow, suction.dew_K, discharge.dew_K), 1e-5)
  const mapPower = positivePart(polynomial(power, suction.dew_K, discharge.dew_K), 1)
  const efficiency = Math.min(Math.max((mapFlow * mapWork) / mapPower, 0.1), 0.95)
  const { leak, mixedEnthalpy, state } = leakBack(
    properties,
    suction,
    discharge,
    gas,
    suctionEnthalpy,
    efficiency,
    wear,
  )
  const swept = mapFlow * (1 + 0.75 * (state.density_kg_m3 / mapState.density_kg_m3 - 1))
  const work = properties.isentropic(discharge, state.entropy_J_kgK) - mixedEnthalpy
  const electric = (mapPower * (swept / mapFlow) * Math.max(work, 0)) / mapWork
  return finish(swept * (1 - leak), electric, suctionEnthalpy, heatLoss)
}

/** Gas that leaks back grows with the pressure ratio and comes back at discharge heat: it thins what is drawn in. */
function leakBack(
  properties: Properties,
  suction: Saturated,
  discharge: Saturated,
  gas: VapourState,
  suctionEnthalpy: number,
  efficiency: number,
  wear: number,
) {
  if (wear === 0) return { leak: 0, mixedEnthalpy: suctionEnthalpy, state: gas }
  const ratio = discharge.pressure_Pa / suction.pressure_Pa
  const leak = Math.min((wear * (ratio - 1)) / 2, 0.9)
  const rise = (properties.isentropic(discharge, gas.entropy_J_kgK) - suctionEnthalpy) / efficiency
  // The leaking gas is compressed again and again: its heat builds up by 1/(1 − leak).
  const mixedEnthalpy = suctionEnthalpy + (Math.max(rise, 0) * leak) / (1 - leak)
  return { leak, mixedEnthalpy, state: properties.vapour(suction, mixedEnthalpy) }
}

function finish(flow_kg_s: number, power_W: number, suctionEnthalpy: number, heatLoss: number): CompressorState {
  return { flow_kg_s, power_W, dischargeEnthalpy_J_kg: suctionEnthalpy + (power_W * (1 - heatLoss)) / flow_kg_s }
}

/** The rating polynomial in SI. */
export function polynomial({ c, scale, unit }: TenCoefficients, suctionDew_K: number, dischargeDew_K: number): number {
  const inScale = (T: number) => (scale === 'C' ? T - 273.15 : (T - 273.15) * 1.8 + 32)
  const [S, D] = [inScale(suctionDew_K), inScale(dischargeDew_K)]
  const [c1, c2, c3, c4, c5, c6, c7, c8, c9, c10] = c as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ]
  return (
    unit *
    (c1 +
      c2 * S +
      c3 * D +
      c4 * S * S +
      c5 * S * D +
      c6 * D * D +
      c7 * S ** 3 +
      c8 * D * S * S +
      c9 * S * D * D +
      c10 * D ** 3)
  )
}
