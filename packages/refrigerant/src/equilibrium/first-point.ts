import { ancillary, roughLiquidDensity, roughSaturationPressure } from '../mixture/ancillary.ts'
import type { MixtureModel } from '../mixture/mixture-model.ts'
import { type Incipient, solveIncipient } from './incipient.ts'

/** Reduced temperatures that are tried, by the mole-fraction mean of the critical temperatures. */
const TRIES = [0.75, 0.7, 0.8, 0.65, 0.85, 0.6]
const ITERATIONS = 40

/** A first solution of the line, where components' own saturation lines are a good guess; false if none is found. */
export function firstPoint(work: Incipient): boolean {
  const { model, z } = work
  let kay = 0
  for (let i = 0; i < z.length; i++) kay += z[i]! * model.components[i]!.critical.temperature_K
  return TRIES.some((fraction) => {
    guess(work, fraction * kay)
    return solveIncipient(work, 'temperature', Math.log(fraction * kay), ITERATIONS) > 0 && plausible(work)
  })
}

/** Raoult's law with the components' own saturation lines, and their liquid volumes added. */
export function guess(work: Incipient, temperature: number): void {
  const { model, z, u, side } = work
  const count = z.length
  const RT = model.gasConstant_J_molK * temperature
  let pressure = 0
  for (let i = 0; i < count; i++) {
    const p = roughSaturationPressure(model.components[i]!, temperature)
    u[i] = p
    pressure += side === 'bubble' ? z[i]! * p : z[i]! / p
  }
  if (side === 'dew') pressure = 1 / pressure
  let volume = 0
  let compressibility = 0
  for (let i = 0; i < count; i++) {
    const fluid = model.components[i]!
    const ratio = side === 'bubble' ? u[i]! / pressure : pressure / u[i]!
    const liquid = side === 'bubble' ? z[i]! : z[i]! * ratio
    const vapour = side === 'bubble' ? z[i]! * ratio : z[i]!
    u[i] = Math.log(z[i]! * ratio)
    volume += liquid / roughLiquidDensity(fluid, temperature)
    compressibility += vapour * roughCompressibility(model, i, temperature)
  }
  const lnLiquid = -Math.log(volume)
  const lnVapour = Math.log(pressure / (compressibility * RT))
  for (let i = 0; i < count; i++) u[i]! += side === 'bubble' ? lnVapour : lnLiquid
  u[count] = side === 'bubble' ? lnLiquid : lnVapour
  u[count + 1] = Math.log(temperature)
}

/** p/ρRT of a component's saturated vapour at the same reduced temperature, at most 0.96. */
function roughCompressibility(model: MixtureModel, i: number, temperature: number): number {
  const { pressure, vapourDensity } = model.components[i]!.ancillary
  const T = Math.min(temperature, 0.96 * pressure.temperature_K)
  return ancillary(pressure, T) / (ancillary(vapourDensity, T) * model.gasConstant_J_molK * T)
}

/** Liquid and vapour densities such as real fluids have at these temperatures: false roots fail one of them. */
function plausible(work: Incipient): boolean {
  const { model, z, given, other, side, u } = work
  const liquid = side === 'bubble' ? given : other
  const vapour = side === 'bubble' ? other : given
  const T = Math.exp(u[z.length + 1]!)
  let volume = 0
  for (let i = 0; i < z.length; i++) volume += liquid.x[i]! / roughLiquidDensity(model.components[i]!, T)
  const ratio = liquid.density * volume
  const Z = vapour.P / vapour.density
  return ratio > 0.85 && ratio < 1.25 && Z > 0.3 && Z <= 1 && liquid.P_density > 0 && vapour.P_density > 0
}
