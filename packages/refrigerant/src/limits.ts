import type { FluidFile } from './data-file.ts'
import type { CriticalPoint } from './equilibrium/critical-point.ts'
import { type SaturationLine, solveLine } from './equilibrium/saturation-line.ts'

/** Where states are given, and where saturation is. */
export interface Limits {
  readonly minTemperature_K: number
  readonly maxTemperature_K: number
  readonly maxPressure_Pa: number
  readonly saturation: {
    readonly minTemperature_K: number
    readonly maxTemperature_K: number
    readonly minPressure_Pa: number
    readonly maxPressure_Pa: number
  }
}

/** A discharge line gets this hot; some papers stop just short of it, and their equations extend there smoothly. */
const COMMON_MAX_TEMPERATURE_K = 425
const COMMON_MAX_PRESSURE_PA = 10e6
/** Colder than any service; some blends' liquids separate in two below it. A component may be below its triple point. */
const MIN_BLEND_TEMPERATURE_K = 173.15
/** Nearer the critical point than this the two phases are refused. */
const HIGHEST_SATURATION = 0.998
/** The bubble pressure of a blend can pass over the critical pressure; saturation by pressure stops below it. */
const HIGHEST_SATURATION_PRESSURE = 0.99

/** The limits of single-phase states: those of the narrowest component, widened as said above. */
export function stateLimits(components: readonly FluidFile[]): Omit<Limits, 'saturation'> {
  const ranges = components.map(({ range }) => range)
  const hottest = Math.min(...ranges.map((range) => range.maxTemperature_K))
  const highest = Math.min(...ranges.map((range) => range.maxPressure_Pa))
  return {
    minTemperature_K: ranges.length === 1 ? ranges[0]!.minTemperature_K : MIN_BLEND_TEMPERATURE_K,
    maxTemperature_K: Math.max(COMMON_MAX_TEMPERATURE_K, hottest),
    maxPressure_Pa: Math.max(COMMON_MAX_PRESSURE_PA, highest),
  }
}

/** The limits of saturation: as far as both lines are followed and rise, and not too near the critical point. */
export function saturationLimits(
  minTemperature: number,
  critical: CriticalPoint,
  bubble: SaturationLine,
  dew: SaturationLine,
): Limits['saturation'] {
  const coldest = Math.exp(Math.max(bubble.lnT[0]!, dew.lnT[0]!))
  const hottest = Math.exp(Math.min(bubble.lnT.at(-1)!, dew.lnT.at(-1)!))
  const minTemperature_K = Math.max(minTemperature, coldest)
  const maxTemperature_K = Math.min(HIGHEST_SATURATION * critical.temperature_K, hottest)
  return {
    minTemperature_K,
    maxTemperature_K,
    minPressure_Pa: pressureAt(bubble, minTemperature_K),
    maxPressure_Pa: Math.min(
      pressureAt(bubble, maxTemperature_K),
      HIGHEST_SATURATION_PRESSURE * critical.pressure_Pa,
      Math.exp(bubble.lnP.at(-1)!),
      Math.exp(dew.lnP.at(-1)!),
    ),
  }
}

function pressureAt(line: SaturationLine, temperature: number): number {
  const [first, last] = [line.lnT[0]!, line.lnT.at(-1)!]
  const lnT = Math.min(Math.max(Math.log(temperature), first), last)
  return solveLine(line, 'temperature', lnT) ? Math.exp(line.work.lnP) : Number.NaN
}
