/** Moist air at sea level. */
export interface Air {
  readonly T_K: number
  /** Kilograms of water per kilogram of dry air. */
  readonly w: number
}

export const CP_AIR = 1020
const P_SITE = 101325
const LATENT = 2.501e6

/** @source Buck 1981, over liquid water, REMEMBERED */
function vapourPressure(T_K: number): number {
  const t = T_K - 273.15
  return 611.21 * Math.exp(((18.678 - t / 234.5) * t) / (257.14 + t))
}

/** Water that saturated air holds, kg per kg of dry air. */
export function saturatedWater(T_K: number): number {
  const e = vapourPressure(T_K)
  return (0.622 * e) / (P_SITE - e)
}

/** J per kg of dry air, 0 °C and dry is 0. */
export function enthalpyOf(T_K: number, w: number): number {
  const t = T_K - 273.15
  return 1006 * t + w * (LATENT + 1860 * t)
}

/** @source psychrometer equation with the coefficient of a ventilated wet bulb, 6.6e-4·(1 + 0.00115 t) (Ferrel), REMEMBERED */
export function airOf(T_K: number, wetBulb_K: number): Air {
  const wet = wetBulb_K - 273.15
  const e = vapourPressure(wetBulb_K) - 6.6e-4 * (1 + 0.00115 * wet) * P_SITE * (T_K - wetBulb_K)
  return { T_K, w: (0.622 * Math.max(e, 10)) / (P_SITE - Math.max(e, 10)) }
}

/** kg/m³ of dry air near sea level. */
export function airDensity(T_K: number): number {
  return P_SITE / (287.05 * T_K)
}

/** Temperature at which this air begins to leave water on a surface; Magnus form turned round. */
export function dewPointOf(w: number): number {
  const e = (Math.max(w, 1e-5) * P_SITE) / (0.622 + Math.max(w, 1e-5))
  const ln = Math.log(e / 611.2)
  return 273.15 + (243.12 * ln) / (17.62 - ln)
}
