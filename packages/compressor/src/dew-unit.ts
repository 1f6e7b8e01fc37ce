/** Unit of the dew temperatures that a set of coefficients is for. Coefficients for one are wrong with the other. */
export type DewUnit = '°F' | '°C'

const SCALE: Readonly<Record<DewUnit, { readonly perK: number; readonly zero_K: number }>> = {
  '°F': { perK: 1.8, zero_K: 459.67 / 1.8 },
  '°C': { perK: 1, zero_K: 273.15 },
}

export const degreesPerKelvin = (unit: DewUnit): number => SCALE[unit].perK

export const fromKelvin = (T: number, unit: DewUnit): number => (T - SCALE[unit].zero_K) * SCALE[unit].perK

export const toKelvin = (t: number, unit: DewUnit): number => t / SCALE[unit].perK + SCALE[unit].zero_K
