import type { SafetyFacts } from './safety.ts'

/**
 * The most of a flammable refrigerant in one circuit of a factory-sealed refrigerating appliance, kg: a household one,
 * and a commercial one, such as a bottle cooler or a display case.
 */
export interface ApplianceChargeLimits {
  readonly household_kg: number
  /** Above the household limit only in a room as large as the marking of the appliance asks for. */
  readonly commercial_kg: number
  readonly standards: { readonly household: string; readonly commercial: string }
  readonly confirmed: boolean
}

const HOUSEHOLD_KG = 0.15
/** Multiple of the lower flammable limit, m³, and the most of whatever refrigerant. */
const COMMERCIAL_M3 = 13
const COMMERCIAL_MOST_KG = 1.2

/**
 * @source IEC 60335-2-24 for household appliances, 150 g; IEC 60335-2-89:2019 for commercial ones, 13 m³ of the lower
 * flammable limit and at most 1.2 kg (before 2019: 150 g). The figures 150 g, 500 g (propane) and 1.2 kg were READ in
 * notices of the change, the factor is REMEMBERED [iec60335-2-24] [iec60335-2-89]
 * @returns undefined for a refrigerant that is not flammable or whose limit is unknown
 */
export function applianceChargeLimits(facts: SafetyFacts): ApplianceChargeLimits | undefined {
  const limit = facts.lowerFlammableLimit_kg_m3
  const safetyClass = facts.safetyClass
  if (!limit || !safetyClass || safetyClass.value.endsWith('1')) return undefined
  return {
    household_kg: HOUSEHOLD_KG,
    commercial_kg: Math.max(HOUSEHOLD_KG, Math.min(COMMERCIAL_M3 * limit.value, COMMERCIAL_MOST_KG)),
    standards: { household: 'iec60335-2-24', commercial: 'iec60335-2-89' },
    confirmed: false,
  }
}
