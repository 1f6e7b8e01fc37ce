import type { Observable } from '../../../packages/diagnosis/src/index.ts'
import type { ReadingSet } from '../../population/case.ts'
import { ALWAYS_READ, only, READINGS_BEHIND } from '../judges/readings-behind.ts'
import type { Judge, Seen, Verdict } from '../verdict.ts'

/** A judge that began with next to nothing and asked for one reading after the other. */
export interface Asked {
  /** Values in its hands when it spoke, weather and rest included. */
  readonly readings: number
  readonly verdict: Verdict
}

/**
 * Hands a judge what it asks for, of what was read on this visit, until it answers or asks for something that is not there. It
 * begins with the air and the suction line.
 */
export function asking({ judge }: Judge, { plate, readings }: Seen): Asked {
  const taken = new Set<keyof ReadingSet>(ALWAYS_READ)
  for (;;) {
    const verdict = judge({ plate, readings: only(readings, taken) })
    const wanted = verdict.kind === 'no-verdict' ? (READINGS_BEHIND[verdict.next as Observable] ?? []) : []
    const there = wanted.filter((key) => readings[key] !== undefined && !taken.has(key))
    if (there.length === 0) return { readings: taken.size, verdict }
    for (const key of there) taken.add(key)
  }
}
