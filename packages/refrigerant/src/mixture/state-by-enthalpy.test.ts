import { kelvin, pascal } from '@chargewright/quantity'
import { describe, expect, it } from 'vitest'
import { computed } from '../../test/computed.ts'
import { stateAt } from '../state.ts'
import { solveByEnthalpy } from './state-by-enthalpy.ts'

describe('solveByEnthalpy', () => {
  it.each([
    ['R-290', 5e5, 300],
    ['R-744', 9e6, 320],
    ['R-448A', 2e6, 290],
    ['R-407C', 3e5, 330],
  ] as const)(
    '[property] %s at %d Pa and %d K: from the enthalpy back to temperature, density and entropy',
    (name, p, T) => {
      const refrigerant = computed(name)
      const state = stateAt(refrigerant, pascal(p), kelvin(T))
      if (!state.ok) throw new Error(JSON.stringify(state.error))
      const { fluid, reference } = refrigerant.engine
      const density = state.value.density_kg_m3 / fluid.molarMass_kg_mol
      const point = { temperature: T * 1.04, density: density * 0.97, entropy_J_kgK: 0 }
      expect(solveByEnthalpy(fluid, p, state.value.enthalpy_J_kg + reference.enthalpy_J_kg, point)).toBe(true)
      expect(point.temperature).toBeCloseTo(T, 6)
      expect(point.density / density).toBeCloseTo(1, 8)
      expect(point.entropy_J_kgK - reference.entropy_J_kgK).toBeCloseTo(state.value.entropy_J_kgK, 5)
    },
  )

  it('[limit] an enthalpy that is no number has no state', () => {
    const { fluid } = computed('R-290').engine
    expect(solveByEnthalpy(fluid, 1e5, Number.NaN, { temperature: 300, density: 40, entropy_J_kgK: 0 })).toBe(false)
  })
})
