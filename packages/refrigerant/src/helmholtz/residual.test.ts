import { describe, expect, it } from 'vitest'
import { departureFiles, fluidFiles } from '../data.ts'
import { D, DD, DT, residual, STRIDE, T, TT } from './residual.ts'
import { tauBank, termTable } from './term-table.ts'

const parts = [
  ...fluidFiles.map((fluid) => ({ name: fluid.name, part: fluid.residual })),
  ...departureFiles.flatMap(({ departures }) =>
    departures.map((departure) => ({ name: departure.name, part: departure })),
  ),
]
const states = [
  [1e-6, 1.1],
  [0.02, 1.3],
  [0.9, 0.98],
  [1, 1.2],
  [2.6, 1.6],
] as const
const STEP = 2e-5

describe('residual part', () => {
  it.each(parts)('[property] derivatives of $name agree with differences of the value', ({ part }) => {
    const at = evaluator(part)
    for (const [delta, tau] of states) {
      const here = at(delta, tau)
      const left = at(delta * Math.exp(-STEP), tau)
      const right = at(delta * Math.exp(STEP), tau)
      const cold = at(delta, tau * Math.exp(STEP))
      const warm = at(delta, tau * Math.exp(-STEP))
      const slope = (a: Float64Array, b: Float64Array, k: number) => (b[k]! - a[k]!) / (2 * STEP)
      const scale = 1 + Math.abs(here[DD]!) + Math.abs(here[TT]!) + Math.abs(here[DT]!)
      const near = (value: number, difference: number) =>
        expect(Math.abs(value - difference) / scale).toBeLessThan(1e-6)
      near(here[D]!, slope(left, right, 0))
      near(here[T]!, slope(warm, cold, 0))
      near(here[DD]!, slope(left, right, D))
      near(here[DT]!, slope(left, right, T))
      near(here[DT]!, slope(warm, cold, D))
      near(here[TT]!, slope(warm, cold, T))
    }
  })

  it.each(parts)('[limit] $name vanishes with the density', ({ part }) => {
    const [value, first] = evaluator(part)(1e-12, 1.2)
    expect(Math.abs(value!)).toBeLessThan(1e-9)
    expect(Math.abs(first!)).toBeLessThan(1e-9)
  })

  it('[limit] the nonanalytic terms of carbon dioxide stay finite at the critical density', () => {
    const { residual: part } = fluidFiles.find(({ name }) => name === 'R-744')!
    for (const tau of [1, 1 + 1e-12, 1.0001]) {
      for (const delta of [1, 1 - 1e-12, 1 + 1e-10]) {
        expect([...evaluator(part)(delta, tau)].every(Number.isFinite)).toBe(true)
      }
    }
  })
})

function evaluator(part: (typeof parts)[number]['part']) {
  const table = termTable([[{ weight: 1, part }]])
  const bank = tauBank(table)
  return (delta: number, tau: number): Float64Array => {
    const out = new Float64Array(STRIDE)
    residual(table, bank, delta, tau, out)
    return out
  }
}
