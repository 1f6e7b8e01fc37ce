import type { State } from '../hypothesis.ts'

/** The same system with this much more charge, over its right charge. */
export const withCharge = ({ system, health }: State, deviation: number): State => ({
  system,
  health: { ...health, charge_kg: health.charge_kg + deviation * system.rated.charge_kg },
})
