import { expect, test } from 'vitest'
import { NORMAL_95, studentT95 } from './student-t.ts'

// Student's t, 95 % one-sided, as printed in any table (REMEMBERED, three decimals). 0.1 % is what is claimed.
test.each([
  [3, 2.353],
  [4, 2.132],
  [5, 2.015],
  [10, 1.812],
  [30, 1.697],
  [120, 1.658],
])('[published] %d degrees of freedom: %f', (degrees, t) => {
  expect(Math.abs(studentT95(degrees) / t - 1)).toBeLessThan(1e-3)
})

test('[limit] many degrees of freedom are the normal distribution', () => {
  expect(studentT95(1e9)).toBeCloseTo(NORMAL_95, 8)
})
