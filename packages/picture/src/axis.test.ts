import fc from 'fast-check'
import { expect, test } from 'vitest'
import { linearAxis, logAxis, tickText } from './axis.ts'

test('[property] a linear axis holds every value between two of its ticks', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -1000, max: 1000, noNaN: true }), { minLength: 1, maxLength: 9 }),
      (values) => {
        const { from, to, ticks } = linearAxis('t', values, 5)
        expect(from).toBeLessThan(to)
        expect(Math.min(...values)).toBeGreaterThanOrEqual(from - 1e-9)
        expect(Math.max(...values)).toBeLessThanOrEqual(to + 1e-9)
        expect(ticks.length).toBeGreaterThanOrEqual(2)
      },
    ),
    { seed: 11 },
  )
})

test('[property] a logarithmic axis is ticked at 1, 2, 3, 5 and 7 of each decade inside its range', () => {
  expect(logAxis('p', 60, 750).ticks).toEqual([70, 100, 200, 300, 500, 700])
  expect(logAxis('p', 0.15, 4).ticks).toEqual([0.2, 0.3, 0.5, 0.7, 1, 2, 3])
})

test('[limit] equal values still make an axis with room', () => {
  const { from, to } = linearAxis('t', [10, 10], 5)
  expect(from).toBeLessThan(10)
  expect(to).toBeGreaterThan(10)
})

test('[property] a tick is written without the noise of binary fractions, and with a true minus', () => {
  expect(tickText(0.1 + 0.2)).toBe('0.3')
  expect(tickText(-20)).toBe('−20')
})
