import {
  CARRIED_OVER,
  type FactName,
  fold,
  type SystemStatement,
  TRADE_DEFAULT,
  type VisitEvent,
} from '@chargewright/visit'

/** The facts that stand on trade habit alone: nobody has confirmed them at the unit. */
export function assumedFacts(events: readonly VisitEvent[]): ReadonlySet<FactName> {
  const assumed = new Set<FactName>()
  for (const { by, holds } of fold({ id: '', events }).log) {
    if (holds?.kind !== 'system-described') continue
    for (const name of Object.keys(holds.facts) as FactName[]) {
      if (by === TRADE_DEFAULT) assumed.add(name)
      else assumed.delete(name)
    }
  }
  return assumed
}

/** The first events of a visit: what is known of its system, with what is only assumed kept apart. */
export function carriedOver(
  system: readonly VisitEvent[],
  head: () => { readonly id: string; readonly at: string },
): readonly VisitEvent[] {
  const { facts } = fold({ id: '', events: system }).system
  const assumed = assumedFacts(system)
  const known = Object.entries(facts)
  const statement = (part: typeof known, by: string): readonly VisitEvent[] =>
    part.length === 0
      ? []
      : [{ ...head(), by, kind: 'system-described', facts: Object.fromEntries(part) as SystemStatement }]
  return [
    ...statement(
      known.filter(([name]) => !assumed.has(name as FactName)),
      CARRIED_OVER,
    ),
    ...statement(
      known.filter(([name]) => assumed.has(name as FactName)),
      TRADE_DEFAULT,
    ),
  ]
}
