import type { FactName, SystemStatement, VisitEvent } from '@chargewright/visit'
import { factsOf } from '../store/facts-of.ts'

/**
 * What a log says of its system after some events and did not say before: the statement that a system takes over from
 * its visit. A fact that was taken back is null in it. Undefined where nothing changed.
 */
export function factsChanged(before: readonly VisitEvent[], after: readonly VisitEvent[]): SystemStatement | undefined {
  const [was, is] = [factsOf(before) ?? {}, factsOf(after) ?? {}]
  const names = [...new Set([...Object.keys(was), ...Object.keys(is)])] as FactName[]
  const changed = names.filter((name) => JSON.stringify(was[name]) !== JSON.stringify(is[name]))
  if (changed.length === 0) return undefined
  return Object.fromEntries(changed.map((name) => [name, is[name] ?? null])) as SystemStatement
}
