import { enthalpyOf, saturatedWater } from './air.ts'

/** Wall temperature at which what comes from the air by enthalpy equals what the refrigerant takes; two Newton steps. */
export function wetWall(start: number, Tr: number, inner: number, air: number, h: number): number {
  let T = start
  for (let k = 0; k < 3; k++) {
    const hs = enthalpyOf(T, saturatedWater(T))
    const slope = (enthalpyOf(T + 0.5, saturatedWater(T + 0.5)) - hs) / 0.5
    T += (air * (h - hs) - inner * (T - Tr)) / (air * slope + inner)
  }
  return T
}
