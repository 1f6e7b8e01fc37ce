import { describe, expect, it } from 'vitest'
import { plate, sized, steady, weather } from '../test/sample.ts'
import { responseAt, SOUND } from './index.ts'

const twin = sized(plate('fixed-orifice'))
const at = weather(32, 26, 18.5)
const right = { ...SOUND, charge_kg: 3.2 }
const base = steady(twin, at, {})
const follow = responseAt(twin, at, right, base.unknowns, ({ superheat_K, subcooling_K, power_W }) =>
  Float64Array.of(superheat_K, subcooling_K, power_W / 1000),
)
const seen = ({ superheat_K, subcooling_K, power_W }: typeof base.readings) => [
  superheat_K,
  subcooling_K,
  power_W / 1000,
]

describe('the answer to a small change', () => {
  it('[property] of nothing is nothing', () => {
    for (const [i, value] of follow(twin, right).entries()) expect(value).toBeCloseTo(seen(base.readings)[i]!, 6)
  })

  it('[property] errs by the square of the change: a fifth of it errs by a twentieth or less', () => {
    const error = (deviation: number) => {
      const health = { ...right, charge_kg: 3.2 * (1 + deviation) }
      const solved = seen(steady(twin, at, health).readings)
      return Math.max(...follow(twin, health).map((value, i) => Math.abs(value - solved[i]!)))
    }
    expect(error(0.004)).toBeLessThan(error(0.02) / 20)
  })

  it('[property] follows the weather', () => {
    const warmer = weather(32.1, 26, 18.5)
    const solved = seen(steady(twin, warmer, {}).readings)
    for (const [i, value] of follow(twin, right, warmer).entries()) expect(value).toBeCloseTo(solved[i]!, 1)
  })
})
