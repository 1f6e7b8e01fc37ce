import { expect, test } from 'vitest'
import { readRefrigerantName } from './refrigerant-name.ts'

test.each([
  ['410a', 'R-410A'],
  ['propane', 'R-290'],
  ['22', 'R-22'],
  ['507', 'R-507A'],
])('[property] “%s” is %s', (typed, name) => {
  expect(readRefrigerantName(typed)).toEqual({ kind: 'read', name })
})

test.each([
  ['410', ['R-410A', 'R-410B']],
  ['R-410X', ['R-410A', 'R-410B']],
  ['1234yfx', ['R-1234yf']],
  ['407', ['R-407A', 'R-407B', 'R-407C', 'R-407D', 'R-407E', 'R-407F', 'R-407G', 'R-407H', 'R-407I']],
])('[limit] “%s” is not guessed: it could be one of %j', (typed, near) => {
  const read = readRefrigerantName(typed)
  expect(read.kind).toBe('unclear')
  if (read.kind === 'unclear') for (const name of read.near) expect(near).toContain(name)
  if (read.kind === 'unclear') expect(read.near.length).toBeGreaterThan(0)
})

test.each(['', '4', 'pasta', '<b>'])('[limit] “%s” is near to nothing', (typed) => {
  expect(readRefrigerantName(typed)).toEqual({ kind: 'unclear', near: [] })
})
