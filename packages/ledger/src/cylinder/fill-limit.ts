import { fail, kelvin, ok, outOfRange, type Problem, quantity, type Result } from '@chargewright/quantity'
import { findRefrigerant, type Refrigerant, saturationAtTemperature } from '@chargewright/refrigerant'
import type { Mass } from './cylinder.ts'

/** The most that a cylinder may hold, and which of the two bounds says so. */
export interface FillLimit {
  readonly mass: Mass
  readonly governs: 'eighty-percent' | 'liquid-full'
  readonly source: string
}

/** Share of the volume that liquid may fill at the reference temperature. */
const FILLED_SHARE = 0.8
const fahrenheit = (t: number) => kelvin((t + 459.67) * (5 / 9))
const REFERENCE = fahrenheit(77)
const HOTTEST = fahrenheit(130)
/** 62.4 lb/ft³, on which stamped water capacities rest (recalled); the heavier the water, the smaller the volume. */
const WATER_KG_M3 = (62.4 * 0.45359237) / 0.3048 ** 3
const MAX_WATER_CAPACITY_KG = 1e5

const GUIDELINE = 'AHRI Guideline K, as quoted in the trade press'
const LIQUID_FULL = '49 CFR 173.304a, recalled: not liquid-full at 130 °F'

/**
 * The smaller of two bounds: liquid fills at most 80 % of the volume at 77 °F, and less than all of it at 130 °F. The
 * second one governs for refrigerants whose liquid swells strongly below their critical point.
 *
 * @param waterCapacity as stamped, above 0 to 100 000 kg of water
 * @returns a problem for an unknown refrigerant and for one that has no liquid at 130 °F: there the filling density
 * stamped or stated for that gas holds
 * @source AHRI Guideline K, as quoted in the trade press; 49 CFR 173.304a, recalled
 */
export function fillLimit(waterCapacity: Mass, refrigerantName: string): Result<FillLimit, Problem> {
  const problem = outOfRange('water capacity', waterCapacity.si, Number.MIN_VALUE, MAX_WATER_CAPACITY_KG, 'kg')
  if (problem) return fail(problem)
  const refrigerant = findRefrigerant(refrigerantName)
  if (!refrigerant.ok) return refrigerant
  const atReference = specificGravity(refrigerant.value, REFERENCE)
  const whenHot = specificGravity(refrigerant.value, HOTTEST)
  if (!atReference.ok) return fail(noLiquid(refrigerant.value))
  if (!whenHot.ok) return fail(noLiquid(refrigerant.value))
  const eighty = fillLimitMass(waterCapacity, atReference.value)
  const full = waterCapacity.si * whenHot.value
  return eighty.si <= full
    ? ok({ mass: eighty, governs: 'eighty-percent', source: GUIDELINE })
    : ok({ mass: quantity('mass', full), governs: 'liquid-full', source: LIQUID_FULL })
}

/**
 * 0.8 · water capacity · specific gravity.
 *
 * @param specificGravity density of the saturated liquid at 77 °F over that of water
 * @source AHRI Guideline K, as quoted in the trade press
 */
export function fillLimitMass(waterCapacity: Mass, specificGravity: number): Mass {
  return quantity('mass', FILLED_SHARE * waterCapacity.si * specificGravity)
}

function specificGravity(refrigerant: Refrigerant, temperature: typeof REFERENCE): Result<number, Problem> {
  const saturation = saturationAtTemperature(refrigerant, temperature)
  return saturation.ok ? ok(saturation.value.bubble.density_kg_m3 / WATER_KG_M3) : saturation
}

const noLiquid = ({ name, critical }: Refrigerant): Problem => ({
  kind: 'unsolved',
  field: 'fill limit',
  value: `${name}, critical at ${critical.temperature_K.toFixed(1)} K`,
  accepted: 'the 80 % rule needs a liquid at 130 °F; use the filling density stated for this gas',
})
