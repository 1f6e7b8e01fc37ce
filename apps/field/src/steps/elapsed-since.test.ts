import { expect, test } from 'vitest'
import { elapsedSince } from './elapsed-since.ts'

const begun = '2026-06-03T13:00:00Z'
const later = (seconds: number) => Date.parse(begun) + 1000 * seconds

test.each([
  [0, '0 min'],
  [40, '40 s'],
  [760, '12 min 40 s'],
  [3600, '1 h'],
  [86_461, '24 h 1 min 1 s'],
])('[property] %d s after the beginning is %s, as one types it', (seconds, typed) => {
  expect(elapsedSince(begun, later(seconds))).toBe(typed)
})

test('[limit] a clock that was set back, or a time that is none, tells nothing', () => {
  expect(elapsedSince(begun, later(-5))).toBeUndefined()
  expect(elapsedSince('yesterday', later(5))).toBeUndefined()
})
