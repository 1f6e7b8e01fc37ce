import { kelvin, pascal } from '@chargewright/quantity'
import { describe, expect, it } from 'vitest'
import { buildEngine } from '../src/engine.ts'
import { stateAt } from '../src/index.ts'
import { pairsOf } from '../src/pair-data.ts'
import type { Refrigerant } from '../src/refrigerant.ts'
import { fluidNamed } from '../src/refrigerant-name.ts'
import { computed } from './computed.ts'
import singlePhase from './data/single-phase.json' with { type: 'json' }

/** The reference tables take each component's ideal part at its printed critical point; so does this engine. */
function likeTheOracle(name: string): Refrigerant {
  const refrigerant = computed(name)
  if (refrigerant.kind === 'pure') return refrigerant
  const fluids = refrigerant.components.map((component) => fluidNamed(component.name)!)
  const pairs = pairsOf(fluids)
  if (pairs.kind !== 'complete') throw new Error('pairs')
  const { massFractions } = refrigerant.engine
  const engine = buildEngine(fluids, massFractions, pairs.pairs, (fluid) => fluid.printedCritical ?? fluid.reducing)
  return { ...refrigerant, engine: engine! }
}

const refrigerants = new Map<string, Refrigerant>()
const named = (name: string): Refrigerant => {
  const known = refrigerants.get(name) ?? likeTheOracle(name)
  refrigerants.set(name, known)
  return known
}

describe('with the ideal part of the reference tables', () => {
  it('[oracle] every single-phase state agrees to 0.05 J/kg in enthalpy', () => {
    expect(singlePhase.rows.length).toBeGreaterThan(1_000)
    for (const [name, , T, p, , h, s] of singlePhase.rows as [string, string, ...number[]][]) {
      const state = stateAt(named(name), pascal(p!), kelvin(T!))
      if (!state.ok) throw new Error(JSON.stringify(state.error))
      expect(Math.abs(state.value.enthalpy_J_kg - h!), `${name} at ${T} K`).toBeLessThan(0.05)
      // The tables also scale ln ρ by each component's own gas constant; ours leaves it as the pressure has it.
      expect(Math.abs(state.value.entropy_J_kgK - s!), `${name} at ${T} K`).toBeLessThan(0.006)
    }
  })
})
