import { FULL_TEST } from '@chargewright/tightness'
import { expect, test } from 'vitest'
import { standingTime } from './standing-time.ts'

const begun = '2026-03-01T13:00:30Z'
const after = (seconds: number) => standingTime(begun, Date.parse(begun) + 1000 * seconds)

test('[property] a standing test tells from its first moment until when it stands', () => {
  expect(after(0)).toEqual({ stood: { dimension: 'duration', si: 0 }, ends: '2026-03-02T13:00:30.000Z' })
  expect(after(119)?.stood.si).toBe(60)
})

test('[limit] nothing once it has stood in full, before it began, or without a time', () => {
  expect(after(FULL_TEST.si - 1)).toBeDefined()
  for (const seconds of [FULL_TEST.si, -1, Number.NaN]) expect(after(seconds)).toBeUndefined()
  expect(standingTime('yesterday', 0)).toBeUndefined()
})
