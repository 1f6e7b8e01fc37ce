import { expect, test } from 'vitest'
import { instantOf, localTime } from './local-time.ts'

const zoned = (minutesEast: number) =>
  localTime(Object.assign(new Date('2026-06-23T04:05:06.789Z'), { getTimezoneOffset: () => -minutesEast }))

test.each([
  [0, '2026-06-23T04:05:06.789Z'],
  [-300, '2026-06-22T23:05:06.789-05:00'],
  [345, '2026-06-23T09:50:06.789+05:45'],
  [-210, '2026-06-23T00:35:06.789-03:30'],
])('[property] %i minutes east of UTC the device tells %s, which is the same instant', (minutes, at) => {
  expect(zoned(minutes)).toBe(at)
  expect(instantOf(at)).toBe(Date.parse('2026-06-23T04:05:06.789Z'))
})

test('[limit] what is no time comes before all', () => {
  expect(instantOf('noon')).toBe(0)
  expect(instantOf('')).toBe(0)
})
