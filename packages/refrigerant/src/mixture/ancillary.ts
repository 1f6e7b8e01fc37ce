import type { Ancillary, FluidFile } from '../data-file.ts'

/** Fits to the saturation line lose their meaning as they run into the critical point; starts are taken below it. */
const HIGHEST_FRACTION = 0.96

/** Value of a saturation-line fit, for first guesses only. */
export function ancillary(fit: Ancillary, temperature: number): number {
  const theta = 1 - temperature / fit.temperature_K
  let sum = 0
  for (let k = 0; k < fit.n.length; k++) sum += fit.n[k]! * theta ** fit.t[k]!
  if (fit.form === 'polynomial') return fit.scale * (1 + sum)
  return fit.scale * Math.exp(fit.inverseTau ? (sum * fit.temperature_K) / temperature : sum)
}

/** Saturation pressure, continued above the critical point along the chord ln p against 1/T, as Wilson's rule does. */
export function roughSaturationPressure(fluid: FluidFile, temperature: number): number {
  const fit = fluid.ancillary.pressure
  const top = HIGHEST_FRACTION * fit.temperature_K
  if (temperature <= top) return ancillary(fit, temperature)
  const pTop = ancillary(fit, top)
  const lower = 0.8 * fit.temperature_K
  const slope = Math.log(pTop / ancillary(fit, lower)) / (1 / lower - 1 / top)
  return pTop * Math.exp(slope * (1 / top - 1 / temperature))
}

/** Density of the saturated liquid, held constant above the highest usable temperature. */
export function roughLiquidDensity(fluid: FluidFile, temperature: number): number {
  const fit = fluid.ancillary.liquidDensity
  return ancillary(fit, Math.min(temperature, HIGHEST_FRACTION * fit.temperature_K))
}
