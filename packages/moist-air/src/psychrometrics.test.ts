import shared from 'psychrolib'
import { expect, test } from 'vitest'
import { psychrometrics } from './psychrometrics.ts'

test('[property] whoever turns the unit switch of the shared library turns neither ours nor we theirs', () => {
  const before = psychrometrics.GetHumRatioFromRelHum(25, 0.5, 101_325)
  shared.SetUnitSystem(1)
  expect(psychrometrics.GetHumRatioFromRelHum(25, 0.5, 101_325)).toBe(before)
  psychrometrics.SetUnitSystem(psychrometrics.SI)
  expect(shared.GetHumRatioFromRelHum(77, 0.5, 14.696)).toBeCloseTo(before, 5)
})
