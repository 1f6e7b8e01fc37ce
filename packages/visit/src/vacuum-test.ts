import { type Dimension, type Problem, parse, type Quantity } from '@chargewright/quantity'
import type { FactOf } from './event.ts'
import { vacuumText } from './vacuum-text.ts'
import type { Origin } from './visit.ts'

/** A vacuum that was shut off from the pump: what it is to be held against, and how its pressure went. */
export interface VacuumTest extends Origin {
  readonly criterion: FactOf<'vacuum-test'>['criterion']
  /** The maker's own figures, so far as they could be read. */
  readonly start?: Quantity<'absolute pressure'>
  readonly limit?: Quantity<'absolute pressure'>
  readonly hold?: Quantity<'duration'>
  readonly resolution?: Quantity<'absolute pressure'>
  readonly coldestSpot?: Quantity<'temperature'>
  /** In the order of their times. */
  readonly readings: readonly VacuumReading[]
  /** The log of the gauge as it was pasted: it goes before single readings. */
  readonly log?: Origin & { readonly text: string; readonly unit?: string }
}

export interface VacuumReading extends Origin {
  readonly typed: string
  /** Since the valve was shut. */
  readonly after: Quantity<'duration'>
  readonly pressure: Quantity<'absolute pressure'>
}

type Refuse = (problem: Problem) => void

export function beginVacuumTest(fact: FactOf<'vacuum-test'>, origin: Origin, refuse: Refuse): VacuumTest {
  const { criterion, start, limit, hold, resolution, coldestSpot } = fact
  return {
    ...origin,
    criterion,
    ...figure('start', start, 'absolute pressure', 'Vacuum to start the hold from', refuse),
    ...figure('limit', limit, 'absolute pressure', 'Vacuum not to rise above', refuse),
    ...figure('hold', hold, 'duration', 'Time to hold the vacuum', refuse),
    ...figure('resolution', resolution, 'absolute pressure', 'Last digit of the vacuum gauge', refuse),
    ...figure('coldestSpot', coldestSpot, 'temperature', 'Coldest spot', refuse),
    readings: [],
  }
}

/** Adds a reading or a log to the test that was begun last; without one it begins a test by the specification. */
export function continueVacuumTest(
  fact: FactOf<'vacuum-reading'> | FactOf<'vacuum-log'>,
  origin: Origin,
  tests: VacuumTest[],
  refuse: Refuse,
): void {
  const test = tests.pop() ?? { ...origin, criterion: 'specification', readings: [] }
  tests.push(test)
  if (fact.kind === 'vacuum-log') {
    const { text, unit } = fact
    tests[tests.length - 1] = { ...test, log: { ...origin, text, ...(unit !== undefined && { unit }) } }
    return
  }
  const after = parse(fact.after, 'duration', { field: 'Time since the valve was shut' })
  const pressure = parse(vacuumText(fact.pressure), 'absolute pressure', { field: 'Vacuum' })
  if (!after.ok) refuse(after.error)
  if (!pressure.ok) refuse(pressure.error)
  if (!after.ok || !pressure.ok) return
  const reading = { ...origin, typed: fact.pressure, after: after.value, pressure: pressure.value }
  const readings = [...test.readings, reading].sort((a, b) => a.after.si - b.after.si)
  tests[tests.length - 1] = { ...test, readings }
}

function figure<Name extends string, D extends Dimension>(
  name: Name,
  typed: string | undefined,
  dimension: D,
  field: string,
  refuse: Refuse,
): { readonly [Key in Name]?: Quantity<D> } {
  if (typed === undefined) return {}
  const text = dimension === 'absolute pressure' ? vacuumText(typed) : typed
  const read = parse(text, dimension, { field })
  if (read.ok) return { [name]: read.value } as { readonly [Key in Name]: Quantity<D> }
  refuse(read.error)
  return {}
}
