import type { SafetyFacts } from './safety.ts'

/**
 * Charge limits of a flammable refrigerant in an air conditioner or heat pump, as cautions: kg per circuit. Below `m1` the room does not matter; above
 * `m2` a room needs special measures; above `m3` the system does not belong in an occupied space.
 */
export interface ChargeLimits {
  readonly m1_kg: number
  readonly m2_kg: number
  readonly m3_kg: number
  readonly standard: string
  readonly confirmed: boolean
}

/** Multiples of the lower flammable limit in m³; 2L refrigerants burn slowly and are allowed more. */
const FACTORS_M3 = { mild: { m1: 6, m2: 52, m3: 260 }, full: { m1: 4, m2: 26, m3: 130 } } as const

/** Comfort cooling: m_max = 2.5·LFL^1.25·h0·√A. */
const ROOM_FACTOR = 2.5
const ROOM_EXPONENT = 1.25

/**
 * @source IEC 60335-2-40:2018, clause GG.1, factors as remembered [iec60335-2-40]
 * @returns undefined for a refrigerant that is not flammable or whose limit is unknown
 */
export function chargeLimits(facts: SafetyFacts): ChargeLimits | undefined {
  const limit = facts.lowerFlammableLimit_kg_m3
  const safetyClass = facts.safetyClass
  if (!limit || !safetyClass || safetyClass.value.endsWith('1')) return undefined
  const factors = safetyClass.value.endsWith('2L') ? FACTORS_M3.mild : FACTORS_M3.full
  return {
    m1_kg: factors.m1 * limit.value,
    m2_kg: factors.m2 * limit.value,
    m3_kg: factors.m3 * limit.value,
    standard: 'iec60335-2-40',
    confirmed: false,
  }
}

/**
 * The largest charge for comfort cooling in one room, kg.
 *
 * @param height_m of the installation: 0.6 on the floor, 1.0 at a window, 1.8 on a wall, 2.2 at the ceiling
 * @param floorArea_m2 of the room
 * @source IEC 60335-2-40, clause GG.2, as remembered [iec60335-2-40]
 */
export function roomChargeLimit_kg(facts: SafetyFacts, height_m: number, floorArea_m2: number): number | undefined {
  const limit = facts.lowerFlammableLimit_kg_m3
  if (!limit || !(height_m > 0) || !(floorArea_m2 > 0)) return undefined
  return ROOM_FACTOR * limit.value ** ROOM_EXPONENT * height_m * Math.sqrt(floorArea_m2)
}
