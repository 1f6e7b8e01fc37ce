import { describe, expect, it } from 'vitest'
import { computed } from '../../test/computed.ts'
import { evaluatePhase, phaseOf } from './phase.ts'

const blends = ['R-32', 'R-410A', 'R-407C', 'R-448A', 'R-455A', 'R-470A', 'R-436A']
const states = [
  [0.01, 0.9],
  [0.3, 1.05],
  [2.4, 0.8],
] as const
const STEP = 1e-5

describe('phase of a mixture', () => {
  it.each(blends)('[property] fugacities and pressure of %s: analytic derivatives agree with differences', (name) => {
    const { model, moleFractions, fluid } = computed(name).engine
    const count = moleFractions.length
    const phase = phaseOf(model)
    const at = (partial: readonly number[], T: number) => {
      phase.partial.set(partial)
      evaluatePhase(model, phase, T, true)
      return { lnF: [...phase.lnF], P: phase.P }
    }
    for (const [delta, t] of states) {
      const T = t * fluid.reducingTemperature_K
      const partial = [...moleFractions].map((x) => x * delta * fluid.reducingDensity_mol_m3)
      at(partial, T)
      const { lnF_T, lnF_partial, lnF_density, P_T, P_partial, P_density, density } = structuredClone(phase)
      const difference = (up: ReturnType<typeof at>, down: ReturnType<typeof at>) => ({
        lnF: up.lnF.map((f, i) => (f - down.lnF[i]!) / (2 * STEP)),
        P: (up.P - down.P) / (2 * STEP),
      })
      const near = (value: number, expected: number) =>
        expect(Math.abs(value - expected) / (1 + Math.abs(expected))).toBeLessThan(1e-6)
      const scaled = (factors: readonly number[]) => partial.map((rho, i) => rho * factors[i]!)
      const one = partial.map(() => 1)

      const byT = difference(at(partial, T * Math.exp(STEP)), at(partial, T * Math.exp(-STEP)))
      for (const [i, slope] of byT.lnF.entries()) near(lnF_T[i]!, slope)
      near(P_T / density, byT.P / density)
      const byDensity = difference(
        at(scaled(one.map(() => Math.exp(STEP))), T),
        at(scaled(one.map(() => Math.exp(-STEP))), T),
      )
      for (const [i, slope] of byDensity.lnF.entries()) near(lnF_density[i]!, slope)
      near(P_density / density, byDensity.P / density)
      for (let j = 0; j < count; j++) {
        const factor = (s: number) => one.map((f, i) => (i === j ? Math.exp(s) : f))
        const byJ = difference(at(scaled(factor(STEP)), T), at(scaled(factor(-STEP)), T))
        for (const [i, slope] of byJ.lnF.entries()) near(lnF_partial[i * count + j]!, slope)
        near(P_partial[j]! / density, byJ.P / density)
      }
    }
  })

  it('[limit] of one component, composition and density derivatives are the same', () => {
    const pure = computed('R-134a').engine
    const T = 300
    const rho = 12_000
    const phase = phaseOf(pure.model)
    phase.partial[0] = rho
    evaluatePhase(pure.model, phase, T, true)
    expect(phase.lnF_partial[0]).toBeCloseTo(phase.lnF_density[0]!, 10)
    expect(phase.P_partial[0]).toBeCloseTo(phase.P_density, 6)
  })
})
