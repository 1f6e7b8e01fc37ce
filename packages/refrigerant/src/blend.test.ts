import { pascal } from '@chargewright/quantity'
import { describe, expect, it } from 'vitest'
import { computed } from '../test/computed.ts'
import { blend } from './blend.ts'
import { saturationAtPressure } from './saturation.ts'

const at = pascal(1e6)

describe('blend', () => {
  it('[property] the recipe of a designated blend gives that blend, in any order', () => {
    const own = blend({ 'R-134a': 0.52, R32: 0.23, 'HFC-125': 0.25 })
    if (!own.ok) throw new Error('not mixed')
    expect(own.value.name).toBe('R-134a/R-32/R-125 (52/23/25)')
    const a = saturationAtPressure(own.value, at)
    const b = saturationAtPressure(computed('R-407C'), at)
    if (!a.ok || !b.ok) throw new Error('no saturation')
    expect(a.value.bubble.temperature_K).toBeCloseTo(b.value.bubble.temperature_K, 8)
    expect(a.value.dew.enthalpy_J_kg).toBeCloseTo(b.value.dew.enthalpy_J_kg, 3)
  })

  it('[limit] one component is the pure fluid', () => {
    const own = blend({ 'R-32': 1, 'R-125': 0 })
    expect(own).toMatchObject({ ok: true, value: { name: 'R-32', kind: 'pure' } })
  })

  it('[limit] a trace of a second component changes next to nothing', () => {
    const own = blend({ 'R-32': 1 - 1e-9, 'R-125': 1e-9 })
    const a = own.ok ? saturationAtPressure(own.value, at) : own
    const b = saturationAtPressure(computed('R-32'), at)
    if (!a.ok || !b.ok) throw new Error('no saturation')
    expect(a.value.bubble.temperature_K).toBeCloseTo(b.value.bubble.temperature_K, 4)
    expect(a.value.dew.temperature_K).toBeCloseTo(b.value.dew.temperature_K, 4)
  })

  it.each([
    [
      { 'R-32': 0.5, 'R-125': 0.4 },
      { kind: 'out-of-range', field: 'sum of the mass fractions', value: 0.9 },
    ],
    [
      { 'R-32': -0.5, 'R-125': 1.5 },
      { kind: 'out-of-range', field: 'mass fraction of R-32' },
    ],
    [{ 'R-32': Number.NaN }, { kind: 'out-of-range' }],
    [{}, { kind: 'out-of-range', field: 'sum of the mass fractions' }],
    [
      { 'R-32': 0.5, nonsense: 0.5 },
      { kind: 'unknown', field: 'refrigerant', value: 'nonsense' },
    ],
    [{ 'R-410A': 1 }, { kind: 'unknown', value: 'R-410A' }],
    [
      { 'R-32': 0.5, R32: 0.5 },
      { kind: 'ambiguous', value: 'R-32' },
    ],
    [
      { 'R-32': 0.5, 'R-601a': 0.5 },
      { kind: 'unsolved', accepted: expect.stringContaining('R-32/R-601a') },
    ],
  ])('[limit] %o is told what is wrong with it', (recipe, error) => {
    expect(blend(recipe as unknown as Record<string, number>)).toMatchObject({ ok: false, error })
  })
})
