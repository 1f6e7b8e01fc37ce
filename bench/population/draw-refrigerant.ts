import type { DeviceKind } from './case.ts'
import type { Random } from './random.ts'

/** One that systems of this kind are filled with, the more common ones more often. */
export function drawRefrigerant(kind: DeviceKind, { one }: Random): string {
  return one(REFRIGERANTS[kind])
}

const REFRIGERANTS: Readonly<Record<DeviceKind, readonly string[]>> = {
  'fixed-orifice': ['R-410A', 'R-410A', 'R-410A', 'R-22', 'R-22', 'R-22', 'R-407C', 'R-454B'],
  capillary: ['R-410A', 'R-410A', 'R-22', 'R-22', 'R-32', 'R-32', 'R-134a', 'R-407C'],
  thermostatic: [
    'R-410A',
    'R-410A',
    'R-410A',
    'R-410A',
    'R-22',
    'R-22',
    'R-32',
    'R-454B',
    'R-454B',
    'R-407C',
    'R-134a',
  ],
}
