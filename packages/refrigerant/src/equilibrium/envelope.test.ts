import { describe, expect, it } from 'vitest'
import { computed, everyRefrigerant } from '../../test/computed.ts'
import { caloricState, evaluateState } from '../mixture/fixed-composition.ts'
import { linesMeet } from './critical-point.ts'

describe('envelope', () => {
  it('[property] every line runs without a gap from its coldest temperature to the critical point', () => {
    for (const { name, engine, critical, kind } of everyRefrigerant()) {
      for (const line of [engine.bubble, engine.dew]) {
        const last = line.nodes.at(-1)!
        const lnT = last.u.length - 1
        expect(Math.abs(last.S), name).toBeLessThan(0.1)
        expect(Math.abs(last.u[lnT]! - Math.log(critical.temperature_K)), name).toBeLessThan(0.01)
        for (const [k, node] of line.nodes.entries()) {
          if (k > 0) expect(Math.abs(node.S - line.nodes[k - 1]!.S), name).toBeLessThan(0.7)
        }
      }
      if (kind === 'blend') expect(linesMeet(engine.bubble.nodes, engine.dew.nodes), name).toBe(true)
    }
  })

  it('[property] of a pure fluid the line obeys Clausius and Clapeyron: dp/dT = Δs/Δv', () => {
    const { engine } = computed('R-134a')
    const liquid = caloricState()
    const vapour = caloricState()
    for (const { u, du, dLnP, lnP } of engine.bubble.nodes.slice(0, -4)) {
      const T = Math.exp(u[2]!)
      evaluateState(engine.fluid, T, Math.exp(u[1]!), liquid)
      evaluateState(engine.fluid, T, Math.exp(u[0]!), vapour)
      const molarVolume = Math.exp(-u[0]!) - Math.exp(-u[1]!)
      const slope = ((vapour.entropy_J_kgK - liquid.entropy_J_kgK) * engine.fluid.molarMass_kg_mol) / molarVolume
      expect(((dLnP / du[2]!) * (Math.exp(lnP) / T)) / slope).toBeCloseTo(1, 7)
    }
  })
})
