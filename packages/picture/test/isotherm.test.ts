import { findRefrigerant } from '@chargewright/refrigerant'
import { describe, expect, test } from 'vitest'
import { isotherm } from '../src/isotherm.ts'
import { plateWindow } from '../src/plate-window.ts'

const fahrenheit = (t: number) => (t + 459.67) / 1.8

function drawn(name: string, T: number) {
  const found = findRefrigerant(name)
  if (!found.ok) throw new Error(name)
  const window = plateWindow(found.value, { points: [], beside: {} })!
  return { states: isotherm(found.value, T, window), critical: found.value.critical, window }
}

describe('an isotherm', () => {
  // 160 °F is 0.4 °F under the critical temperature of R-410A: the equations are not asked within 1 % of its pressure.
  test.each([
    ['R-410A', fahrenheit(160)],
    ['R-32', fahrenheit(180)],
    ['R-290', fahrenheit(210)],
    ['R-407C', fahrenheit(190)],
  ])('[property] of %s just above or under its critical temperature has no corner', (name, T) => {
    const { states, window } = drawn(name, T)
    const span =
      Math.max(...states.map(({ enthalpy }) => enthalpy)) - Math.min(...states.map(({ enthalpy }) => enthalpy))
    const tall = Math.log(window.top_Pa / window.bottom_Pa)
    // As on the plate, which is 1.5 times as wide as it is tall.
    const points = states.map(({ enthalpy, pressure }) => [(1.5 * enthalpy) / span, Math.log(pressure) / tall] as const)
    const headings = points.slice(1).map(([x, y], i) => Math.atan2(y - points[i]![1], x - points[i]![0]))
    const turns = headings.slice(1).map((heading, i) => Math.abs(heading - headings[i]!))
    expect(Math.max(...turns)).toBeLessThan(Math.PI / 6)
  })

  test('[property] goes down from the top of the window to its bottom, and gains enthalpy on the way', () => {
    const { states, window } = drawn('R-410A', fahrenheit(160))
    expect(states[0]?.pressure).toBeCloseTo(window.top_Pa, 3)
    expect(states.at(-1)?.pressure).toBeCloseTo(window.bottom_Pa, 3)
    for (const [i, { pressure, enthalpy }] of states.entries()) {
      const before = states[i - 1]
      if (!before) continue
      expect(pressure).toBeLessThan(before.pressure)
      expect(enthalpy).toBeGreaterThan(before.enthalpy)
    }
  })
})
