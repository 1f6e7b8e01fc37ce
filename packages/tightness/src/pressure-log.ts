import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'

/** One reading of a vacuum gauge. */
export interface LogEntry {
  /** Since the first reading, which is the one at which the system was shut off from the pump. */
  readonly elapsed_s: number
  /** Absolute. */
  readonly pressure_Pa: number
}

/** Readings in the order of time, no two at the same moment, the first at 0 s. */
export type PressureLog = readonly LogEntry[]

const MAX_S = 30 * 86_400
/** Less than any gauge on a service hose shows (0.00075 micron). */
const MIN_PA = 1e-4
const MAX_PA = 110_000
/** Far more than a person or a gauge writes down in a month; keeps a hostile file from taking minutes. */
const MAX_ENTRIES = 20_000

/**
 * Checks readings and hands them on as a log, its time counted from the first of them.
 *
 * @param entries time rising, from any zero, over at most 30 days; pressure 0.0001 Pa to 110 kPa absolute; one to
 *   20 000 of them
 * @returns the log; else the first reading that is out of range or out of order
 */
export function pressureLog(entries: readonly LogEntry[]): Result<PressureLog, Problem> {
  const size = outOfRange('readings in the log', entries.length, 1, MAX_ENTRIES, 'readings')
  if (size) return fail(size)
  const log = entries.map(({ elapsed_s, pressure_Pa }) => ({
    elapsed_s: elapsed_s - entries[0]!.elapsed_s,
    pressure_Pa,
  }))
  for (const [i, { elapsed_s, pressure_Pa }] of log.entries()) {
    const row = `reading ${i + 1}`
    const previous = log[i - 1]
    const problem =
      outOfRange(`${row}, time since the first`, elapsed_s, 0, MAX_S, 's') ??
      outOfRange(`${row}, pressure`, pressure_Pa, MIN_PA, MAX_PA, 'Pa absolute') ??
      (previous && elapsed_s <= previous.elapsed_s ? outOfOrder(row, elapsed_s, previous.elapsed_s) : undefined)
    if (problem) return fail(problem)
  }
  return ok(log)
}

function outOfOrder(row: string, value: number, previous: number): Problem {
  return {
    kind: 'unreadable',
    field: `${row}, time`,
    value: `${value} s after the first`,
    accepted: `a time after the reading before it, ${previous} s after the first`,
  }
}
