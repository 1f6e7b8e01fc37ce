import { expect, test } from 'vitest'
import { type LeakQuestion, leak } from './leak.ts'
import { leakText } from './leak-text.ts'

const QUESTION = { refrigerant: 'R-407C', temperature_K: 298.15, lost: 0.2 }

function answer(question: LeakQuestion) {
  const answered = leak(question)
  if (!answered.ok) throw new Error(answered.error.kind)
  return answered.value
}

test('[property] a vapour leak takes the light component first, and topping up brings some of it back', () => {
  const { before, after, topped_up } = answer({ ...QUESTION, top_up_to: 1 })
  const light = [before, after, topped_up].map((content) => content?.components['R-32'] ?? 0)
  expect(light[1]).toBeLessThan(light[2]!)
  expect(light[2]).toBeLessThan(light[0]!)
  expect(after.pressure_shift_Pa).toBeLessThan(0)
})

test('[property] the chart of the nominal blend is right before the leak, and shows too much superheat after it', () => {
  const { before, after } = answer(QUESTION)
  expect(before.chart_error.superheat_K).toBeCloseTo(0, 6)
  expect(after.chart_error.superheat_K).toBeGreaterThan(0.5)
  expect(leakText(answer(QUESTION), 80)).toMatch(/chart shows superheat +right +\d\.\d °F high/)
})

test('[property] a page with topping up fits a terminal of 80 columns', () => {
  const text = leakText(answer({ ...QUESTION, refrigerant: 'R-448A', lost: 0.4, top_up_to: 1 }), 80)
  expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80)
})

test.each<[LeakQuestion, string, string]>([
  [{}, 'missing', 'refrigerant'],
  [{ refrigerant: 'R-407C' }, 'missing', 'temperature'],
  [{ refrigerant: 'R-407C', temperature_K: 298.15 }, 'missing', 'lost'],
  [{ ...QUESTION, refrigerant: 'R-99999' }, 'unknown', 'refrigerant'],
  [{ ...QUESTION, from: 'gas' }, 'unreadable', 'from'],
  [{ ...QUESTION, lost: 1.5 }, 'out-of-range', 'lost'],
  [{ ...QUESTION, temperature_K: 9999 }, 'out-of-range', 'temperature'],
])('[limit] %j is a problem that names the field', (question, kind, field) => {
  expect(leak(question)).toMatchObject({ ok: false, error: { kind, field } })
})
