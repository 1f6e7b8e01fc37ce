import type { UnitPreference } from '@chargewright/quantity'

/** Cylinders are weighed in pounds or kilograms, not in ounces or grams. */
export function bookUnits(units: UnitPreference): UnitPreference {
  return { ...units, mass: units.length === 'm' ? 'kg' : 'lb' }
}
