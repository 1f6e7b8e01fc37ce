import { evidence, type Quantity, quantity, say } from '@chargewright/quantity'
import { lastChange, type Origin, type ReadingId, type Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'
import { LIMITS } from '../limit.ts'
import { settling } from '../timed.ts'

const { settleTime } = LIMITS

/**
 * Readings of the circuit count when the system has run for 15 minutes since the start and since every change, and when they were
 * taken after that change.
 */
export function settled(visit: Visit, needed: readonly ReadingId[]): Condition {
  const change = lastChange(visit)
  const stale = needed.flatMap((id) => visit.readings[id] ?? []).filter((r) => change && r.position < change.position)
  if (change && stale.length > 0) {
    return {
      id: 'settled',
      state: 'unmet',
      evidence: {
        ...evidence(say`The readings were taken before the last change to the system`),
        eventId: change.eventId,
      },
      remedy: settling(say`Let it run ${settleTime.quantity}, then read again`),
      next: { entry: { kind: 'reading', what: stale[0]!.what }, why: say`it was read before the last change` },
    }
  }
  const ran = runningTime(visit, change, needed)
  switch (ran.kind) {
    case 'settled':
      return { id: 'settled', state: 'met', evidence: ran.evidence }
    case 'not-settled':
      return {
        id: 'settled',
        state: 'unmet',
        evidence: ran.evidence,
        remedy: settling(say`Let it run until ${settleTime.quantity} have passed without a change, then read again`),
      }
    case 'unknown':
      return {
        id: 'settled',
        state: 'unknown',
        evidence: evidence(say`Nothing says how long the system has run without a change`),
        remedy: settling(say`Let it run ${settleTime.quantity} and say so`),
        next: {
          entry: { kind: 'observation', what: 'running-time' },
          why: say`readings count only when the system has settled`,
        },
      }
  }
}

type Ran =
  | { readonly kind: 'settled' | 'not-settled'; readonly evidence: Condition['evidence'] }
  | { readonly kind: 'unknown' }

function runningTime(visit: Visit, change: Origin | undefined, needed: readonly ReadingId[]): Ran {
  const since = change?.position ?? -1
  const observed = visit.observations['running-time']
  if (observed && observed.position > since) {
    const isSettled = observed.answer === 'settled'
    const statement = isSettled
      ? say`The system has run at least ${settleTime.quantity} without a change`
      : say`The system has not yet run ${settleTime.quantity} without a change`
    return {
      kind: isSettled ? 'settled' : 'not-settled',
      evidence: { ...evidence(statement, settleTime.source), eventId: observed.eventId },
    }
  }
  const read = latest(needed.flatMap((id) => visit.readings[id] ?? []))
  const waited = visit.waits
    .filter((wait) => wait.purpose === 'settle' && wait.position > since && !(read && wait.position > read.position))
    .reduce((sum, wait) => sum + wait.duration.si, 0)
  const byClock = change ? elapsed(change, read) : 0
  const time = quantity('duration', Math.max(waited, byClock))
  if (time.si === 0) return { kind: 'unknown' }
  return {
    kind: time.si >= settleTime.quantity.si ? 'settled' : 'not-settled',
    evidence: ranFor(time, change ? 'since the last change' : 'before the readings'),
  }
}

function ranFor(time: Quantity<'duration'>, since: string): Condition['evidence'] {
  return evidence(say`The system ran ${time} ${since}; ${settleTime.quantity} are asked for`, settleTime.source)
}

/** Seconds from one event to another as the device's clock told them; zero when it told nothing usable. */
function elapsed(from: Origin, to: Origin | undefined): number {
  // biome-ignore lint/style/noRestrictedGlobals: reads the times that were written down, not the clock
  const seconds = to ? [to.at, from.at].map(Date.parse).reduce((a, b) => a - b) / 1000 : 0
  return seconds > 0 && seconds < 24 * 3600 ? seconds : 0
}

function latest<T extends Origin>(items: readonly T[]): T | undefined {
  return items.reduce<T | undefined>((last, item) => (last && last.position > item.position ? last : item), undefined)
}
