import { type Problem, parse, type Quantity } from '@chargewright/quantity'
import type { FactOf } from './event.ts'
import { measured } from './measured.ts'
import { instrumentSort } from './plain-instrument.ts'
import type { Origin } from './visit.ts'

/** A standing test under nitrogen: what reads it, and what was read. */
export interface PressureTest extends Origin {
  readonly fact: FactOf<'pressure-test'>
  /** In the order of their times. */
  readonly readings: readonly PressureTestReading[]
}

export interface PressureTestReading extends Origin {
  /** Since the first reading of the test. */
  readonly after: Quantity<'duration'>
  readonly pressure: Quantity<'gauge pressure' | 'absolute pressure'>
  readonly temperature: Quantity<'temperature'>
}

export function beginPressureTest(fact: FactOf<'pressure-test'>, origin: Origin): PressureTest {
  return { ...origin, fact, readings: [] }
}

/** Adds a reading to the test that was begun last; without one it begins a test. */
export function continuePressureTest(
  fact: FactOf<'pressure-test-reading'>,
  origin: Origin,
  tests: PressureTest[],
  refuse: (problem: Problem) => void,
): void {
  const test = tests.pop() ?? beginPressureTest({ kind: 'pressure-test', gas: 'nitrogen' }, origin)
  tests.push(test)
  const { gauge, thermometer } = test.fact
  const after = parse(fact.after, 'duration', { field: 'Time since the first reading' })
  const pressure = measured(fact.pressure, PRESSURE, GAUGE, gauge, 'Test pressure')
  const temperature = measured(fact.temperature, ['temperature'], THERMOMETER, thermometer, 'Temperature of the gas')
  for (const read of [after, pressure, temperature]) if (!read.ok) refuse(read.error)
  if (!after.ok || !pressure.ok || !temperature.ok) return
  const reading = {
    ...origin,
    after: after.value,
    pressure: pressure.value.quantity,
    temperature: temperature.value.quantity,
  }
  const readings = [...test.readings, reading].sort((a, b) => a.after.si - b.after.si)
  tests[tests.length - 1] = { ...test, readings }
}

const PRESSURE = ['gauge pressure', 'absolute pressure'] as const
const GAUGE = instrumentSort('high-side-gauge').accuracy
const THERMOMETER = instrumentSort('pipe-thermometer').accuracy
