import type { Fan } from './fan.ts'
import type { Random } from './random.ts'

/** A fan that gives this flow for this power on a clean coil. */
export function drawFan({ uniform }: Random, clean_m3_s: number, power_W: number, holdsFlow: boolean): Fan {
  return { clean_m3_s, power_W, steepness: uniform(0.3, 0.6), holdsFlow, missing: 0, because: 'blocked' }
}
