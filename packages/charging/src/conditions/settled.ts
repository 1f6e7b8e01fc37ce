import { evidence, quantity, say } from '@chargewright/quantity'
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
        ...(ran.early && {
          next: { entry: { kind: 'reading', what: ran.early }, why: say`it was read before the system had settled` },
        }),
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
  | { readonly kind: 'settled'; readonly evidence: Condition['evidence'] }
  | { readonly kind: 'not-settled'; readonly evidence: Condition['evidence']; readonly early: ReadingId | undefined }
  | { readonly kind: 'unknown' }

/** How long the system had run when it was read. Every reading must have waited: a late one does not make up for an early one. */
function runningTime(visit: Visit, change: Origin | undefined, needed: readonly ReadingId[]): Ran {
  const said = visit.observations['running-time']
  const answer = said && said.position > (change?.position ?? -1) ? said : undefined
  if (answer?.answer === 'settled') {
    const statement = say`The system has run at least ${settleTime.quantity} without a change`
    return { kind: 'settled', evidence: { ...evidence(statement, settleTime.source), eventId: answer.eventId } }
  }
  // To say that it has not run long enough begins the wait anew.
  const from = answer ?? change
  const reads = needed.flatMap((id) => visit.readings[id] ?? [])
  const times = (reads.length > 0 ? reads : [undefined])
    .map((read) => ({ what: read?.what, seconds: ranUntil(visit, from, read) }))
    .sort((a, b) => a.seconds - b.seconds)
  const least = times[0]
  const most = times.at(-1)
  if (!least || !most || most.seconds === 0) {
    if (!answer) return { kind: 'unknown' }
    const statement = say`The system has not yet run ${settleTime.quantity} without a change`
    const said = { ...evidence(statement, settleTime.source), eventId: answer.eventId }
    return { kind: 'not-settled', evidence: said, early: least?.what }
  }
  const since = from === change && change ? 'since the last change' : 'before the readings'
  const asked = settleTime.quantity
  if (least.seconds >= asked.si) {
    const time = quantity('duration', least.seconds)
    const statement = say`The system ran ${time} ${since}; ${asked} are asked for`
    return { kind: 'settled', evidence: evidence(statement, settleTime.source) }
  }
  const time = quantity('duration', most.seconds)
  const statement =
    most.seconds >= asked.si
      ? say`Some readings were taken before the system had run ${asked}`
      : say`When it was read, the system had run ${time} ${since}; ${asked} are asked for`
  return { kind: 'not-settled', evidence: evidence(statement, settleTime.source), early: least.what }
}

/** Seconds without a change until a reading, or until now where none is needed: by the waits that were entered, or by the clock. */
function ranUntil(visit: Visit, from: Origin | undefined, read: Origin | undefined): number {
  const [after, before] = [from?.position ?? -1, read?.position ?? Number.POSITIVE_INFINITY]
  const waited = visit.waits
    .filter(({ purpose, position }) => purpose === 'settle' && position > after && position < before)
    .reduce((sum, wait) => sum + wait.duration.si, 0)
  return Math.max(waited, from && read ? elapsed(from, read) : 0)
}

/** Seconds from one event to another as the device's clock told them; zero when it told nothing usable. */
function elapsed(from: Origin, to: Origin): number {
  // biome-ignore lint/style/noRestrictedGlobals: reads the times that were written down, not the clock
  const seconds = (Date.parse(to.at) - Date.parse(from.at)) / 1000
  return seconds > 0 && seconds < 24 * 3600 ? seconds : 0
}
