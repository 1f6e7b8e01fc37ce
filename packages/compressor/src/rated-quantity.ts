/** What a rating gives, with the units in which makers print it: how much of the SI unit (kg/s, W, A, W) each is. */
export const RATED_UNITS = {
  'mass flow': { 'lb/h': 0.45359237 / 3600, 'kg/h': 1 / 3600, 'kg/s': 1, 'g/s': 1e-3 },
  power: { W: 1, kW: 1000 },
  current: { A: 1 },
  capacity: { 'Btu/h': 1055.05585262 / 3600, W: 1, kW: 1000 },
} as const satisfies Readonly<Record<string, Readonly<Record<string, number>>>>

export type RatedQuantity = keyof typeof RATED_UNITS

export const RATED_QUANTITIES = Object.keys(RATED_UNITS) as readonly RatedQuantity[]

/** How much SI one of `unit` is; undefined for a unit that this quantity does not have. */
export function siPerUnit(what: RatedQuantity, unit: string): number | undefined {
  const units: Readonly<Record<string, number>> = RATED_UNITS[what]
  return Object.hasOwn(units, unit) ? units[unit] : undefined
}

/** A value in SI (kg/s, W, A, W) with its standard uncertainty. */
export interface Rating {
  readonly what: RatedQuantity
  readonly si: number
  readonly u: number
}
