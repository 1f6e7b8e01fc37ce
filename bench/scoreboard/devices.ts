import type { DeviceKind } from '../population/case.ts'

/** The kinds that are scored, in the order of every table. */
export const DEVICES = ['fixed-orifice', 'capillary', 'thermostatic'] as const satisfies readonly DeviceKind[]
