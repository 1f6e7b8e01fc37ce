import type { Preferences } from '../session/preference.ts'
import { DeviceInstruments } from './device-instruments.tsx'
import { DeviceUnits } from './device-units.tsx'

export interface DevicePanelsProps {
  readonly of: 'units' | 'instruments'
  readonly preferences: Preferences
}

/** The settings that are seldom opened: a part of their own, loaded when one of them is. */
export function DevicePanels({ of, preferences }: DevicePanelsProps) {
  return of === 'units' ? <DeviceUnits preferences={preferences} /> : <DeviceInstruments preferences={preferences} />
}
