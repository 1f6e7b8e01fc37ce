import { fail, ok, type Problem, type Quantity, quantity, type Result } from '@chargewright/quantity'
import {
  judgePressureTest,
  type PressureTest,
  type PressureTestFinding,
  type TestReading,
} from './judge-pressure-test.ts'

/** A reading of a standing test, on a clock that all of its readings share. */
export interface TimedReading extends TestReading {
  readonly time: Quantity<'duration'>
}

/** Each later reading of a standing test against the first. */
export interface StandingTest {
  readonly findings: readonly { readonly after: Quantity<'duration'>; readonly finding: PressureTestFinding }[]
  readonly last: PressureTestFinding
}

/**
 * A standing test that was read more than twice: what each later reading says against the first.
 *
 * @param readings two or more, in the order of time
 * @returns the findings in that order; else what is missing or the first reading out of range
 */
export function judgeStandingTest(
  [start, ...later]: readonly TimedReading[],
  conditions: Pick<PressureTest, 'atmosphere' | 'sameInstruments'>,
): Result<StandingTest, Problem> {
  if (!start || later.length === 0) {
    const accepted = 'two or more, each with time, pressure and temperature'
    return fail({ kind: 'missing', field: 'readings of the pressure test', value: start ? 'one' : 'nothing', accepted })
  }
  const findings: StandingTest['findings'][number][] = []
  for (const end of later) {
    const after = quantity('duration', end.time.si - start.time.si)
    const finding = judgePressureTest({ start, end, duration: after, ...conditions })
    if (!finding.ok) return finding
    findings.push({ after, finding: finding.value })
  }
  return ok({ findings, last: findings.at(-1)!.finding })
}
