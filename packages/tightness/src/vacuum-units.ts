import type { UnitPreference } from '@chargewright/quantity'

/**
 * A preference with absolute pressure shown as vacuum gauges show it: micron where pressures are in psi, else Pa. In
 * psia or bar a every vacuum worth the name would be shown as zero.
 */
export function vacuumUnits(preference: UnitPreference): UnitPreference {
  const inchPound = preference['absolute pressure'] === 'psia' || preference['absolute pressure'] === 'micron'
  return { ...preference, 'absolute pressure': inchPound ? 'micron' : 'Pa a' }
}
