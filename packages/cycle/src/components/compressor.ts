import { boxRegion, type RatingPolynomial, ratedValue } from '@chargewright/compressor'
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
  /** Isentropic work over the electric work that goes with it, at the best pressure ratio. */
  readonly bestEfficiency: number
  readonly bestRatio: number
  /** How fast the efficiency falls away from its best, with the square of the logarithm of the pressure ratio. */
  readonly bend: number
  /** Friction and magnetisation, drawn whatever is pumped, W. */
  readonly constant_W: number
  /** Share of the work of compression that warms the gas before it is compressed, from motor and shell. */
  readonly shellHeat: number
  /** Share of the electric power that leaves through the shell. */
  readonly heatLoss: number
}

/** The maker's ten-coefficient ratings of flow and power, times a factor that fits them to this unit. */
export interface MappedCompressor {
  readonly kind: 'map'
  readonly flow: RatingPolynomial
  readonly power: RatingPolynomial
  readonly flowFactor: number
  readonly powerFactor: number
  /** Superheat at which the map was measured, K. */
  readonly superheat_K: number
  readonly heatLoss: number
}

export interface CompressorState {
  readonly flow_kg_s: number
  readonly power_W: number
  readonly dischargeEnthalpy_J_kg: number
}

/** Half of the liquid that the shell's heat leaves has boiled before the gas is shut in: the rest takes no swept volume. */
const BOILED_SHARE = 0.5

/**
 * Liquid that comes with the gas boils in shell and cylinder, where it fills swept volume and cools no room; what is
 * left is compressed as a mist. Oil thinned by it is not modelled.
 *
 * @param gas the state at the suction enthalpy
 * @param wear share of the swept gas that leaks back hot, 0 when sound
 * @source map: AHRI 540, as the compressor package has it; correction for another superheat, with 0.75 of the density ratio on
 *   the flow: Rice and Dabiri 1981, both READ in open heat-pump models. Efficiency falling with the square of the
 *   logarithm of the pressure ratio away from its best: a test holds it within 4 % of a published map.
 *   Constant loss beside the work: Winandy, Saavedra and Lebrun 2002, REMEMBERED. Share of the liquid that boils: set so
 *   that a fifth of overcharge costs what the published fits say, between −1.4 % and −4.3 % of efficiency.
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
  machine: VolumetricCompressor,
  properties: Properties,
  suction: Saturated,
  discharge: Saturated,
  gas: VapourState,
  suctionEnthalpy: number,
  wear: number,
): CompressorState {
  const ratio = discharge.pressure_Pa / suction.pressure_Pa
  const efficiency = machine.bestEfficiency / (1 + machine.bend * Math.log(ratio / machine.bestRatio) ** 2)
  const filling = positivePart(1 - machine.clearance * (ratio - 1) - 0.1, 0.02) + 0.1
  const { leak, heat } = leakBack(properties, discharge, gas, suctionEnthalpy, efficiency, wear, ratio)
  // The work of an ideal gas at constant temperature is near enough for a share of it.
  const warmed =
    (machine.shellHeat * suction.pressure_Pa * Math.log(ratio)) / (suction.vapourDensity_kg_m3 * efficiency)
  const enthalpy = boiled(suction, suctionEnthalpy + heat + Math.max(warmed, 0))
  const shutIn = enthalpy === suctionEnthalpy ? gas : properties.vapour(suction, enthalpy)
  const swept = machine.sweep_m3_s * filling * shutIn.density_kg_m3
  const work = properties.isentropic(discharge, shutIn.entropy_J_kgK) - enthalpy
  const power = (swept * Math.max(work, 0)) / efficiency + machine.constant_W
  return finish(swept * (1 - leak), power, suctionEnthalpy, machine.heatLoss)
}

function boiled({ vapourEnthalpy_J_kg }: Saturated, enthalpy: number): number {
  return enthalpy + BOILED_SHARE * Math.max(vapourEnthalpy_J_kg - enthalpy, 0)
}

function mapped(
  { flow, power, flowFactor, powerFactor, superheat_K, heatLoss }: MappedCompressor,
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
  const mapFlow = flowFactor * rated(flow, suction.dew_K, discharge.dew_K)
  const mapPower = powerFactor * rated(power, suction.dew_K, discharge.dew_K)
  const efficiency = Math.min(Math.max((mapFlow * mapWork) / mapPower, 0.1), 0.95)
  const ratio = discharge.pressure_Pa / suction.pressure_Pa
  const { leak, heat } = leakBack(properties, discharge, gas, suctionEnthalpy, efficiency, wear, ratio)
  const enthalpy = boiled(suction, suctionEnthalpy + heat)
  const shutIn = enthalpy === suctionEnthalpy ? gas : properties.vapour(suction, enthalpy)
  const swept = mapFlow * (1 + 0.75 * (shutIn.density_kg_m3 / mapState.density_kg_m3 - 1))
  const work = properties.isentropic(discharge, shutIn.entropy_J_kgK) - enthalpy
  const electric = (mapPower * (swept / mapFlow) * Math.max(work, 0)) / mapWork
  return finish(swept * (1 - leak), electric, suctionEnthalpy, heatLoss)
}

/** Gas that leaks back grows with the pressure ratio and comes back at discharge heat: it thins what is drawn in. */
function leakBack(
  properties: Properties,
  discharge: Saturated,
  gas: VapourState,
  suctionEnthalpy: number,
  efficiency: number,
  wear: number,
  ratio: number,
): { readonly leak: number; readonly heat: number } {
  if (wear === 0) return { leak: 0, heat: 0 }
  const leak = Math.min((wear * (ratio - 1)) / 2, 0.9)
  const rise = (properties.isentropic(discharge, gas.entropy_J_kgK) - suctionEnthalpy) / efficiency
  // The leaking gas is compressed again and again: its heat builds up by 1/(1 − leak).
  return { leak, heat: (Math.max(rise, 0) * leak) / (1 - leak) }
}

function finish(flow_kg_s: number, power_W: number, suctionEnthalpy: number, heatLoss: number): CompressorState {
  return { flow_kg_s, power_W, dischargeEnthalpy_J_kg: suctionEnthalpy + (power_W * (1 - heatLoss)) / flow_kg_s }
}

/** The rating, and outside the maker's region its cubic's own continuation: an iteration passes there, a result is judged. */
function rated(polynomial: RatingPolynomial, suctionDew_K: number, dischargeDew_K: number): number {
  const value = ratedValue({ ...polynomial, region: ANYWHERE }, { suctionDew_K, dischargeDew_K })
  return value.ok ? value.value.si : LEAST_RATING
}

const ANYWHERE = boxRegion([1, 2000], [1, 2000])
/** What a cubic that went below zero is taken for, kg/s or W. */
const LEAST_RATING = 1e-6
