import type { Design } from './design.ts'
import { settle } from './settle.ts'
import type { Weather } from './unit.ts'

/**
 * What the maker's chart asks for: the superheat of his design, new and rightly charged, in whole °F.
 *
 * @returns K; undefined behind a valve, below 5 °F, and where the design finds no steady state
 */
export function makersSuperheat(design: Design, weather: Weather): number | undefined {
  if (design.unit.device.kind === 'thermostatic') return undefined
  const sound = settle(design.unit, design, weather, design.right_kg)
  const printed_F = sound && Math.round(1.8 * sound.superheat_K)
  return printed_F !== undefined && printed_F >= LEAST_F ? printed_F / 1.8 : undefined
}

/** Less cannot be told from none. */
const LEAST_F = 5
