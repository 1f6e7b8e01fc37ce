import { evidence, quantity, say } from '@chargewright/quantity'
import { lastChange, type ObservationId, type Origin, type ReadingId, type Visit } from '@chargewright/visit'
import type { Condition, NextEntry } from '../assessment.ts'
import { LIMITS } from '../limit.ts'
import { settling } from '../timed.ts'

const { settleTime } = LIMITS

/**
 * Readings of the circuit, and what was seen of it, count when the system has run for 15 minutes since the start and since
 * every change, and when they were taken after that change.
 */
export function settled(visit: Visit, needed: readonly ReadingId[], looked: readonly ObservationId[] = []): Condition {
  const change = lastChange(visit)
  const taken = [
    ...needed.flatMap((what) => of({ kind: 'reading', what }, visit.readings[what])),
    ...looked.flatMap((what) => of({ kind: 'observation', what }, visit.observations[what])),
  ]
  const before = taken.filter(({ position }) => change && position < change.position)
  const [stale, ...alsoStale] = before
  if (change && stale) {
    const isRead = stale.entry.kind === 'reading'
    const statement = isRead
      ? say`The readings were taken before the last change to the system`
      : say`The system was looked at before the last change to it`
    return {
      id: 'settled',
      state: 'unmet',
      evidence: { ...evidence(statement), eventId: change.eventId },
      remedy: settling(
        isRead
          ? say`Let it run ${settleTime.quantity}, then read again`
          : say`Let it run ${settleTime.quantity}, then look again`,
      ),
      next: beforeChange(stale),
      again: alsoStale.map(beforeChange),
    }
  }
  const ran = runningTime(visit, change, taken)
  switch (ran.kind) {
    case 'settled':
      return { id: 'settled', state: 'met', evidence: ran.evidence }
    case 'not-settled':
      return {
        id: 'settled',
        state: 'unmet',
        evidence: ran.evidence,
        remedy: ran.hasRun
          ? say`Read again what was read before that`
          : settling(say`Let it run until ${settleTime.quantity} have passed without a change, then read again`),
        ...(ran.early[0] && { next: tooEarly(ran.early[0]), again: ran.early.slice(1).map(tooEarly) }),
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

const beforeChange = ({ entry }: Taken): NextEntry => ({
  entry,
  why: entry.kind === 'reading' ? say`it was read before the last change` : say`it was seen before the last change`,
})

const tooEarly = (entry: Taken['entry']): NextEntry => ({
  entry,
  why: say`it was read before the system had settled`,
})

/** What was taken of the circuit: where it is entered, and where it stands in the log. */
interface Taken extends Origin {
  readonly entry: NextEntry['entry']
}

const of = (entry: Taken['entry'], origin: Origin | undefined): readonly Taken[] =>
  origin ? [{ ...origin, entry }] : []

type Ran =
  | { readonly kind: 'settled'; readonly evidence: Condition['evidence'] }
  | {
      readonly kind: 'not-settled'
      readonly evidence: Condition['evidence']
      /** By now, whatever was read before. */
      readonly hasRun: boolean
      /** What was taken before that, the earliest first. */
      readonly early: readonly Taken['entry'][]
    }
  | { readonly kind: 'unknown' }

/** How long the system had run when it was read. Every reading must have waited: a late one does not make up for an early one. */
function runningTime(visit: Visit, change: Origin | undefined, taken: readonly Taken[]): Ran {
  const said = visit.observations['running-time']
  const answer = said && said.position > (change?.position ?? -1) ? said : undefined
  // To say that it has not run long enough begins the wait anew.
  const from = answer ?? change
  const waited_s = visit.waits
    .filter(({ purpose, position }) => purpose === 'settle' && position > (from?.position ?? -1))
    .reduce((sum, { duration }) => sum + duration.si, 0)
  const hasRun = answer?.answer === 'settled' || waited_s >= settleTime.quantity.si
  const isSettledBefore = (read: Origin) =>
    (answer?.answer === 'settled' && answer.position < read.position) ||
    (change !== undefined && elapsed(change, read) >= settleTime.quantity.si)
  const during = taken
    .filter((one) => !isSettledBefore(one) && isWithinWait(visit, change, one))
    .map(({ entry }) => entry)
  if (during.length > 0) {
    const statement = say`Some readings were taken before the system had run ${settleTime.quantity}`
    return { kind: 'not-settled', evidence: evidence(statement, settleTime.source), hasRun, early: during }
  }
  if (answer?.answer === 'settled') {
    const statement = say`The system has run at least ${settleTime.quantity} without a change`
    return { kind: 'settled', evidence: { ...evidence(statement, settleTime.source), eventId: answer.eventId } }
  }
  const times = (taken.length > 0 ? taken : [undefined])
    .map((one) => ({ entry: one?.entry, seconds: ranUntil(visit, from, one) }))
    .sort((a, b) => a.seconds - b.seconds)
  const least = times[0]
  const most = times.at(-1)
  const asked = settleTime.quantity
  const early = times.flatMap(({ entry, seconds }) => (entry && seconds < asked.si ? [entry] : []))
  if (!least || !most || most.seconds === 0) {
    if (!answer) return { kind: 'unknown' }
    const statement = say`The system has not yet run ${settleTime.quantity} without a change`
    const said = { ...evidence(statement, settleTime.source), eventId: answer.eventId }
    return { kind: 'not-settled', evidence: said, hasRun, early }
  }
  const since = from === change && change ? 'since the last change' : 'before the readings'
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
  return { kind: 'not-settled', evidence: evidence(statement, settleTime.source), hasRun, early }
}

/** Whether something was read while the system was still let run: then no later word that it has run makes it good. */
const isWithinWait = (visit: Visit, change: Origin | undefined, read: Origin): boolean =>
  visit.waits.some((wait) => {
    if (wait.purpose !== 'settle' || wait.position < read.position || wait.position < (change?.position ?? -1))
      return false
    const begun = visit.begun.findLast(({ purpose, position }) => purpose === 'settle' && position < wait.position)
    const isItsOwn =
      begun && begun.position > (change?.position ?? -1) && !visit.waits.some((other) => isBetween(begun, other, wait))
    // One that nobody began here is known by its length alone.
    if (isItsOwn) return begun.position < read.position
    const left_s = elapsed(read, wait)
    return left_s > 0 && left_s < wait.duration.si
  })

const isBetween = (from: Origin, one: Origin & Pick<Visit['waits'][number], 'purpose'>, to: Origin): boolean =>
  one.purpose === 'settle' && one.position > from.position && one.position < to.position

/** Seconds without a change until a reading, or until now where none is needed: by the waits that were entered, or by the clock. */
function ranUntil(visit: Visit, from: Origin | undefined, read: Origin | undefined): number {
  const [after, before] = [from?.position ?? -1, read?.position ?? Number.POSITIVE_INFINITY]
  const waited = visit.waits
    .filter(({ purpose, position }) => purpose === 'settle' && position > after && position < before)
    .reduce((sum, wait) => sum + wait.duration.si, 0)
  return Math.max(waited, from && read ? elapsed(from, read) : 0)
}

/** Seconds from one event to another as the device's clock told them; zero when it told nothing usable. */
function elapsed(from: Pick<Origin, 'at'>, to: Pick<Origin, 'at'>): number {
  // biome-ignore lint/style/noRestrictedGlobals: reads the times that were written down, not the clock
  const seconds = (Date.parse(to.at) - Date.parse(from.at)) / 1000
  return seconds > 0 && seconds < 24 * 3600 ? seconds : 0
}
