import { type Family, familyOf } from '@chargewright/diagnosis'
import type { Problem, Result } from '@chargewright/quantity'
import type { System } from '@chargewright/visit'
import { nameplateOf } from '../twin/sized-system.ts'

type Made = Result<Family, readonly Problem[]>

/**
 * The systems that the facts of a visit may stand for. The last few are kept by their facts: each asks for a dozen
 * sizings, and a visit is judged again after every entry.
 */
export function familyOfSystem(system: System): Made {
  const plate = nameplateOf(system)
  if (!plate.ok) return plate
  const { properties, ...figures } = plate.value
  const key = JSON.stringify([system.facts.refrigerant, figures])
  const made = kept.get(key) ?? make(plate.value)
  kept.delete(key)
  kept.set(key, made)
  for (const oldest of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(oldest)
  return made
}

const kept = new Map<string, Made>()
const MOST_KEPT = 8

function make(plate: Parameters<typeof familyOf>[0]): Made {
  const family = familyOf(plate)
  return family.ok ? family : { ok: false, error: [family.error] }
}
