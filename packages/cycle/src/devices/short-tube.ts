import { smoothMin } from '../smooth.ts'
import { choking, type DeviceInlet } from './inlet.ts'

/** A fixed orifice: a short tube of 1 mm to 2 mm bore. */
export interface ShortTube {
  readonly kind: 'fixed-orifice'
  readonly diameter_m: number
  readonly length_m: number
}

/** Least share of the liquid flow that passes when almost only vapour arrives. */
const VAPOUR_SHARE = 0.05

/**
 * Mass flow of a short-tube orifice, kg/s: choked, corrected for vapour at the inlet.
 *
 * @source Payne and O'Neal 2004, HVAC&R Research 10(1) 73–87; coefficients READ in two open codes, alike in all digits
 * @accuracy of the source: R-12, R-134a, R-502, R-22, R-407C, R-410A; for others it is used as a dimensionless form
 *   whose size is found from the nameplate
 *
 * Differs from the source on purpose: its two-phase factor does not start at 1 for no vapour, which would be a jump in
 * the flow, and a floor keeps a flow of almost pure vapour positive.
 */
export function shortTubeFlow(
  tube: ShortTube,
  inlet: DeviceInlet,
  critical: { readonly temperature_K: number; readonly pressure_Pa: number },
  downstream_Pa: number,
): number {
  const area = (Math.PI / 4) * tube.diameter_m ** 2
  const liquid = liquidFlux(tube, inlet, critical)
  return (
    area * liquid * twoPhaseFactor(tube, inlet, critical.pressure_Pa) * choking(inlet.at.pressure_Pa, downstream_Pa)
  )
}

/** What the liquid form of the correlation asks for. */
export interface LiquidFlux {
  readonly pressure_Pa: number
  readonly bubblePressure_Pa: number
  readonly subcooling_K: number
  readonly liquidDensity_kg_m3: number
  readonly vapourDensity_kg_m3: number
}

/** kg/(s·m²) for a subcooled inlet, as printed: π₁ √(ρf pc). */
export function shortTubeLiquidFlux(
  { diameter_m, length_m }: Pick<ShortTube, 'diameter_m' | 'length_m'>,
  at: LiquidFlux,
  critical: { readonly temperature_K: number; readonly pressure_Pa: number },
): number {
  const pi3 = (at.pressure_Pa - at.bubblePressure_Pa) / critical.pressure_Pa
  const pi6 = at.vapourDensity_kg_m3 / at.liquidDensity_kg_m3
  const pi9 = at.subcooling_K / critical.temperature_K
  const pi10 = length_m / diameter_m
  const numerator = 0.38811 + 11.427 * pi3 - 14.194 * pi9 + 1.0703 * pi6 - 0.091928 * Math.log(pi10)
  const pi1 = numerator / (1 + 21.425 * pi3 - 581.95 * pi9 ** 2)
  return pi1 * Math.sqrt(at.liquidDensity_kg_m3 * critical.pressure_Pa)
}

/** The correlation's data end near 17 K; its quadratic term has a pole further out, so the subcooling enters up to here. */
const MOST_SUBCOOLING_K = 14

function liquidFlux(tube: ShortTube, inlet: DeviceInlet, critical: { temperature_K: number; pressure_Pa: number }) {
  const held = smoothMin(inlet.subcooling_K, MOST_SUBCOOLING_K, 0.5) / Math.max(inlet.subcooling_K, 1e-3)
  const share = inlet.subcooling_K > 1e-3 ? Math.min(held, 1) : 1
  const { at } = inlet
  return shortTubeLiquidFlux(
    tube,
    {
      pressure_Pa: at.pressure_Pa,
      bubblePressure_Pa: at.pressure_Pa - share * (at.pressure_Pa - inlet.bubblePressure_Pa),
      subcooling_K: share * inlet.subcooling_K,
      liquidDensity_kg_m3: inlet.quality > 0 ? at.liquidDensity_kg_m3 : inlet.density_kg_m3,
      vapourDensity_kg_m3: at.vapourDensity_kg_m3,
    },
    critical,
  )
}

/**
 * The share of the saturated liquid's flow that passes when vapour arrives with it: the printed factor over its own
 * value for no vapour where that is below 1, capped at 1. At low pressures, where there were no data, the printed form
 * has a pole; there the factor of the lowest pressure it is sound at is used.
 */
function twoPhaseFactor(
  { diameter_m, length_m }: ShortTube,
  { quality, at }: DeviceInlet,
  critical_Pa: number,
): number {
  if (quality === 0) return 1
  const pi27 = length_m / diameter_m
  const reduced = Math.max(at.pressure_Pa / critical_Pa, LOWEST_REDUCED_PRESSURE)
  const ratio = Math.min(at.liquidDensity_kg_m3 / at.vapourDensity_kg_m3, HIGHEST_DENSITY_RATIO)
  const printed = (x: number) => shortTubeTwoPhaseFactor(1 / (1 + x * (ratio - 1)), x, ratio, reduced, pi27)
  const factor = Math.max(printed(quality), 0) / Math.min(printed(0), 1)
  return VAPOUR_SHARE + (1 - VAPOUR_SHARE) * Math.min(factor, 1)
}

const LOWEST_REDUCED_PRESSURE = 0.25
const HIGHEST_DENSITY_RATIO = 20

/** The factor as printed; with vapour present the liquid is saturated, so that two of its groups are one. */
function shortTubeTwoPhaseFactor(
  densityShare: number,
  quality: number,
  densityRatio: number,
  reducedPressure: number,
  lengthOverDiameter: number,
): number {
  const t6 = densityShare
  const t34 = (quality / (1 - quality)) * Math.sqrt(densityRatio)
  const ln32 = Math.log(1 - reducedPressure)
  const ln27 = Math.log(lengthOverDiameter)
  const numerator =
    1.1831 * t6 -
    1.468 * t6 * t6 -
    0.15285 * Math.log(t6) ** 2 +
    (9.8401 - 14.639) * ln32 * ln32 -
    0.019798 * ln27 * ln27
  return numerator / (1 - 1.5348 * t6 - 2.0533 * t34 - 17.195 * reducedPressure ** 3)
}
