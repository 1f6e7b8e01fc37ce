import { describe, expect, it } from 'vitest'
import { fluidFiles } from '../data.ts'
import { addNonanalytic } from './nonanalytic.ts'
import { STRIDE } from './residual.ts'

const terms = fluidFiles.find(({ name }) => name === 'R-744')!.residual.nonanalytic!

function values(delta: number, tau: number, negligible?: number): Float64Array {
  const out = new Float64Array(STRIDE)
  addNonanalytic(terms, 1, delta, tau, out, 0, negligible)
  return out
}

describe('nonanalytic terms', () => {
  it('[property] what is left out far from the critical point is below 1e-17, with all derivatives', () => {
    let differing = 0
    for (let delta = 0.01; delta < 4; delta += 0.017) {
      for (let tau = 0.1; tau < 2; tau += 0.007) {
        const kept = values(delta, tau)
        for (const [k, whole] of values(delta, tau, Number.POSITIVE_INFINITY).entries()) {
          const difference = Math.abs(kept[k]! - whole)
          if (!(difference < 1e-17)) throw new Error(`${difference} in value ${k} at δ ${delta}, τ ${tau}`)
          if (difference > 0) differing++
        }
      }
    }
    expect(differing).toBeGreaterThan(1_000)
  })

  it('[limit] they vanish in a cold liquid and in a hot gas, and do not at the critical point', () => {
    expect([...values(2.65, 1.4)]).toEqual([0, 0, 0, 0, 0, 0])
    expect([...values(0.1, 0.5)]).toEqual([0, 0, 0, 0, 0, 0])
    expect(values(1.1, 1).every((value) => value !== 0)).toBe(true)
  })
})
