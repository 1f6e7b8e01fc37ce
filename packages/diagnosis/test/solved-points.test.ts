import { expect, test } from 'vitest'
import { type Cause, diagnose, type Knowledge, type WeighedSet } from '../src/index.ts'
import { EXACT, family, reading } from './sample.ts'

const WARM = { outdoor_C: 32, returnAir_C: 26, wetBulb_C: 18.5 }
const ORIFICE = 'fixed-orifice'
const REST_K = 300

interface Question {
  readonly sets: readonly WeighedSet[]
  readonly ruledOut?: readonly Cause[]
}

const read = (causes: Readonly<Partial<Record<Cause, number>>>, weather = WARM, added_kg = 0): WeighedSet => ({
  readings: reading(ORIFICE, causes, weather),
  added_kg,
})
const SHORT = read({ 'short-of-charge': -0.2 })
const STARVED = read({ 'low-indoor-air': 0.3 })
const REST = {
  pressure_Pa: family(ORIFICE).nominal.properties.bubblePressure(REST_K + 2),
  ambient_K: REST_K,
}

/** Other readings in one weather, a cause ruled out, another weather, a step weighed in, thin air, and standing still. */
const QUESTIONS: readonly Question[] = [
  { sets: [SHORT] },
  { sets: [STARVED] },
  { sets: [STARVED], ruledOut: ['low-indoor-air'] },
  { sets: [read({ 'short-of-charge': -0.2 }, { ...WARM, outdoor_C: 38 })] },
  { sets: [read({ 'short-of-charge': -0.2 }, { ...WARM, wetBulb_C: 22 })] },
  { sets: [SHORT, read({ 'short-of-charge': -0.1 }, WARM, 0.32)] },
  { sets: [{ ...SHORT, readings: { ...SHORT.readings, airPressure_Pa: 85_000 } }] },
  { sets: [{ ...SHORT, readings: { ...SHORT.readings, standstill: REST } }] },
]

test('[property] an answer does not depend on what was asked before it', () => {
  const answers = (questions: readonly Question[], isAskedFirst: boolean) =>
    questions.map(({ sets, ruledOut = [] }) => {
      const knowledge: Knowledge = { calibration: EXACT, ruledOut }
      // What is kept is kept with the family itself: a copy of it was never asked anything.
      return diagnose(isAskedFirst ? { ...family(ORIFICE) } : family(ORIFICE), sets, knowledge)
    })
  const fresh = answers(QUESTIONS, true)
  expect(fresh.every(({ ok }) => ok)).toBe(true)
  expect(answers(QUESTIONS, false)).toEqual(fresh)
  expect(answers(QUESTIONS.toReversed(), false)).toEqual(fresh.toReversed())
})
