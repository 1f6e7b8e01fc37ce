import { type Evidence, evidence, say } from '@chargewright/quantity'
import { type FigureId, type ReadingId, readingKind, type Visit } from '@chargewright/visit'
import type { Condition, Finding, NextEntry } from './assessment.ts'
import { entryLabel } from './entry-label.ts'

/**
 * Stops a method that may not speak yet: *not ready* while a condition is broken; *cannot tell* while nothing tells
 * whether one holds, or while a reading is missing, and then every entry that is still wanted is named. Undefined when
 * the method may speak.
 */
export function gate(
  visit: Visit,
  conditions: readonly Condition[],
  needed: readonly ReadingId[],
): Finding | undefined {
  const all = conditions.filter(({ state }) => state === 'unmet')
  // Nothing else is to be done before that.
  const first = all.filter(({ id }) => id === 'not-overfilled')
  const unmet = first.length > 0 ? first : all
  if (unmet[0]) {
    return {
      kind: 'not-ready',
      sentence: unmet[0].evidence.statement,
      reasons: unmet.map(({ evidence }) => evidence),
      steps: unmet.flatMap(({ remedy }) => remedy ?? []),
      next: distinct(unmet.flatMap(({ next, again = [] }) => [...(next ? [next] : []), ...again])),
    }
  }
  const unknown = conditions.filter(({ state }) => state === 'unknown')
  const readings = needed.filter((id) => !visit.readings[id]).map(nextReading)
  const next = distinct([...unknown.flatMap((condition) => condition.next ?? []), ...readings])
  if (next.length === 0) return undefined
  const missing = missingEntries(next)
  return {
    ...missing,
    sentence: unknown[0]?.evidence.statement ?? missing.sentence,
    reasons: [...unknown.map(({ evidence }) => evidence), ...readings.map(asReason)],
    steps: unknown.flatMap(({ remedy }) => remedy ?? []),
  }
}

function distinct(entries: readonly NextEntry[]): readonly NextEntry[] {
  return entries.filter((a, i) => entries.findIndex((b) => b.entry.what === a.entry.what) === i)
}

/** *Cannot tell* because entries are missing. */
export function missingEntries(next: readonly NextEntry[]): Finding {
  return {
    kind: 'cannot-tell',
    sentence: say`Still missing: ${entryLabel(next[0]!.entry)}`,
    reasons: next.map(asReason),
    steps: [],
    next,
  }
}

/** What is wanted and why, as one line. */
function asReason({ entry, why }: NextEntry): Evidence {
  return evidence(say`${entryLabel(entry)}: ${why}`)
}

export function nextReading(what: ReadingId): NextEntry {
  const { tells } = readingKind(what)
  return { entry: { kind: 'reading', what }, why: say`would tell ${tells}` }
}

export function nextFigure(what: FigureId, why: NextEntry['why']): NextEntry {
  return { entry: { kind: 'figure', what }, why }
}
