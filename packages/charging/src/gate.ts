import { say } from '@chargewright/quantity'
import { type FigureId, figureKind, type ReadingId, readingKind, type Visit } from '@chargewright/visit'
import type { Condition, Finding, NextEntry } from './assessment.ts'
import { evidence } from './evidence.ts'

/**
 * Stops a method whose conditions do not hold: *not ready* when one is broken, *cannot tell* when nothing was entered
 * that tells. Nothing when the method may speak.
 */
export function gate(conditions: readonly Condition[]): Finding | undefined {
  const unmet = conditions.filter((condition) => condition.state === 'unmet')
  if (unmet[0]) return stopped('not-ready', unmet[0], unmet)
  const unknown = conditions.filter((condition) => condition.state === 'unknown')
  return unknown[0] && stopped('cannot-tell', unknown[0], unknown)
}

function stopped(kind: 'not-ready' | 'cannot-tell', first: Condition, all: readonly Condition[]): Finding {
  return {
    kind,
    sentence: first.evidence.statement,
    reasons: all.map((condition) => condition.evidence),
    steps: all.flatMap((condition) => condition.remedy ?? []),
    next: all.flatMap((condition) => condition.next ?? []),
  }
}

/** *Cannot tell* because readings are missing; undefined when all are there. */
export function missingReadings(visit: Visit, needed: readonly ReadingId[]): Finding | undefined {
  const missing = needed.filter((id) => !visit.readings[id])
  return missing.length === 0 ? undefined : missingEntries(missing.map(nextReading))
}

/** *Cannot tell* because entries are missing. */
export function missingEntries(next: readonly NextEntry[]): Finding {
  return {
    kind: 'cannot-tell',
    sentence: say`Still missing: ${next[0]!.why}`,
    reasons: next.map(({ why }) => evidence(why)),
    steps: [],
    next,
  }
}

export function nextReading(what: ReadingId): NextEntry {
  const { label, tells } = readingKind(what)
  return { entry: { kind: 'reading', what }, why: say`${label} would tell ${tells}` }
}

export function nextFigure(what: FigureId, why: NextEntry['why']): NextEntry {
  return { entry: { kind: 'figure', what }, why: say`${figureKind(what).label}: ${why}` }
}
