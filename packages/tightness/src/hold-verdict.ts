import { type Evidence, evidence, type Quantity, quantity, type Statement, say } from '@chargewright/quantity'
import type { HoldCriterion } from './hold-criterion.ts'
import type { PressureLog } from './pressure-log.ts'

/**
 * `pass`: held as the criterion asks. `not-held`: rose above it. `keep-watching`: not above it, but not long enough.
 * `not-deep-enough`: shut off too early. `too-cold`: water in the coldest spot would not show at these pressures.
 * `falling`: the pressure goes down, which no shut-off system at rest does.
 */
export type HoldKind = 'pass' | 'not-held' | 'keep-watching' | 'not-deep-enough' | 'too-cold' | 'falling'

/** What each is called. */
export const HOLD_WORDS: Readonly<Record<HoldKind, string>> = {
  pass: 'held',
  'not-held': 'not held',
  'keep-watching': 'keep watching',
  'not-deep-enough': 'not deep enough',
  'too-cold': 'too cold to tell',
  falling: 'pressure falls',
}

export interface HoldVerdict {
  readonly kind: HoldKind
  readonly sentence: Statement
  readonly reason: Evidence
}

/** The coldest part of the system and the vapour pressure of water in it. */
export interface ColdestSpot {
  readonly temperature: Quantity<'temperature'>
  readonly vapour: Quantity<'absolute pressure'>
}

/** The readings against a criterion as it is written: what the gauge shows, without a guard. */
export function holdVerdict(
  log: PressureLog,
  criterion: HoldCriterion,
  coldest: ColdestSpot | undefined,
  falls: boolean,
): HoldVerdict {
  const { start, limit, hold, source } = criterion
  const first = pressure(log[0]!.pressure_Pa)
  const atEnd = pressureAfter(log, hold.si)
  const during = log.filter((entry) => entry.elapsed_s <= hold.si).map((entry) => entry.pressure_Pa)
  const peak = pressure(Math.max(...during, atEnd ?? 0))
  const watched = quantity('duration', Math.min(log.at(-1)!.elapsed_s, hold.si))

  if (first.si > start.si) {
    return {
      kind: 'not-deep-enough',
      sentence: say`The system was shut off too early: pull down to ${start} first`,
      reason: evidence(say`Shut off at ${first}, above the ${start} to start from`, source),
    }
  }
  if (peak.si > limit.si) {
    return {
      kind: 'not-held',
      sentence: say`The vacuum did not hold: ${peak} is above ${limit}`,
      reason: evidence(say`${peak} within ${watched} is above ${limit}`, source),
    }
  }
  if (coldest && coldest.vapour.si < limit.si) {
    return {
      kind: 'too-cold',
      sentence: say`Ice in the coldest spot would not show: ${coldest.temperature} is too cold for this test`,
      reason: evidence(
        say`Water at ${coldest.temperature} has a vapour pressure of ${coldest.vapour} only, below ${limit}`,
        'ASHRAE Fundamentals 2017, ch. 1, eq. 5 and 6',
      ),
    }
  }
  if (falls) {
    return {
      kind: 'falling',
      sentence: say`The pressure falls: this is no test of a system that is shut off and at rest`,
      reason: evidence(say`From ${first} it went down by more than its scatter`),
    }
  }
  if (atEnd === undefined) {
    return {
      kind: 'keep-watching',
      sentence: say`Not above ${limit} so far: keep watching until ${hold} have passed`,
      reason: evidence(say`At most ${peak} in the first ${watched} of ${hold}`, source),
    }
  }
  return {
    kind: 'pass',
    sentence: say`The vacuum held: at most ${peak} in ${hold}`,
    reason: evidence(say`From ${first}, at most ${peak} in ${hold}, not above ${limit}`, source),
  }
}

const pressure = (si: number) => quantity('absolute pressure', si)

/** Between the readings before and after, on the straight line; undefined after the last. */
function pressureAfter(log: PressureLog, elapsed_s: number): number | undefined {
  const i = log.findIndex((entry) => entry.elapsed_s >= elapsed_s)
  const after = log[i]
  const before = log[i - 1]
  if (!after || !before) return after?.pressure_Pa
  const share = (elapsed_s - before.elapsed_s) / (after.elapsed_s - before.elapsed_s)
  return before.pressure_Pa + share * (after.pressure_Pa - before.pressure_Pa)
}
