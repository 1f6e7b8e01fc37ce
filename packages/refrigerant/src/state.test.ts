import { kelvin, pascal } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computed, everyRefrigerant } from '../test/computed.ts'
import { saturationAtPressure } from './saturation.ts'
import { type State, stateAt, stateAtQuality } from './state.ts'

const refrigerants = everyRefrigerant()
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true })

function at(name: string, pressure: number, temperature: number): State {
  const state = stateAt(computed(name), pascal(pressure), kelvin(temperature))
  if (!state.ok) throw new Error(JSON.stringify(state.error))
  return state.value
}

describe('stateAt', () => {
  it('[property] cp is the slope of h, and h, s and p of neighbouring states agree with each other', () => {
    for (const [name, p, T] of [
      ['R-32', 1e6, 330],
      ['R-407C', 3e6, 300],
      ['R-744', 9e6, 320],
      ['R-454B', 2e5, 260],
    ] as const) {
      const here = at(name, p, T)
      const warm = at(name, p, T + 0.01)
      const cold = at(name, p, T - 0.01)
      const up = at(name, p * 1.0001, T)
      const down = at(name, p * 0.9999, T)
      expect((warm.enthalpy_J_kg - cold.enthalpy_J_kg) / 0.02 / here.cp_J_kgK!).toBeCloseTo(1, 6)
      // dh = T·ds + v·dp, along both directions.
      expect((T * (warm.entropy_J_kgK - cold.entropy_J_kgK)) / (warm.enthalpy_J_kg - cold.enthalpy_J_kg)).toBeCloseTo(
        1,
        6,
      )
      const work = up.enthalpy_J_kg - down.enthalpy_J_kg - T * (up.entropy_J_kgK - down.entropy_J_kgK)
      expect((work * here.density_kg_m3) / (2e-4 * p)).toBeCloseTo(1, 5)
    }
  })

  it('[property] at the saturation line liquid and vapour meet the saturated phases', () => {
    fc.assert(
      fc.property(fc.constantFrom(...refrigerants), share, (refrigerant, where) => {
        const { minPressure_Pa, maxPressure_Pa } = refrigerant.engine.limits.saturation
        const p = pascal(minPressure_Pa * (maxPressure_Pa / minPressure_Pa) ** (0.97 * where))
        const lines = saturationAtPressure(refrigerant, p)
        if (!lines.ok) throw new Error(JSON.stringify(lines.error))
        const { bubble, dew } = lines.value
        const liquid = stateAt(refrigerant, p, kelvin(bubble.temperature_K - 1e-5))
        const vapour = stateAt(refrigerant, p, kelvin(dew.temperature_K + 1e-5))
        if (bubble.temperature_K - 1e-5 >= refrigerant.range.minTemperature_K) {
          expect(liquid).toMatchObject({ ok: true, value: { phase: 'liquid' } })
          if (liquid.ok) expect(Math.abs(liquid.value.density_kg_m3 / bubble.density_kg_m3 - 1)).toBeLessThan(1e-4)
        }
        expect(vapour).toMatchObject({ ok: true, value: { phase: 'vapour' } })
        if (vapour.ok) expect(Math.abs(vapour.value.density_kg_m3 / dew.density_kg_m3 - 1)).toBeLessThan(1e-4)
      }),
      { numRuns: 2_000, seed: 2 },
    )
  })

  it('[property] two-phase by pressure and temperature returns the quality it was made with', () => {
    const wide = refrigerants.filter(({ kind }) => kind === 'blend')
    fc.assert(
      fc.property(fc.constantFrom(...wide), share, share, (refrigerant, where, quality) => {
        const { maxPressure_Pa } = refrigerant.engine.limits.saturation
        const p = pascal(1e5 * (maxPressure_Pa / 1e5) ** (0.97 * where))
        const lines = saturationAtPressure(refrigerant, p)
        if (!lines.ok) throw new Error(JSON.stringify(lines.error))
        const { bubble, dew } = lines.value
        const state = stateAtQuality(refrigerant, p, quality)
        if (!state.ok) throw new Error(JSON.stringify(state.error))
        expect(state.value.temperature_K).toBeGreaterThan(bubble.temperature_K - 1e-4)
        expect(state.value.temperature_K).toBeLessThan(dew.temperature_K + 1e-4)
        expect(state.value.enthalpy_J_kg).toBeGreaterThan(bubble.enthalpy_J_kg)
        expect(state.value.enthalpy_J_kg).toBeLessThan(dew.enthalpy_J_kg)
        if (dew.temperature_K - bubble.temperature_K < 0.1) return
        const back = stateAt(refrigerant, p, kelvin(state.value.temperature_K))
        expect(back).toMatchObject({ ok: true, value: { phase: 'two-phase' } })
        if (back.ok) expect(Math.abs(back.value.quality! - quality)).toBeLessThan(1e-4)
      }),
      { numRuns: 1_000, seed: 3 },
    )
  })

  it('[limit] quality 0 and 1 are the bubble and the dew point', () => {
    for (const name of ['R-290', 'R-407C', 'R-455A', 'R-513A']) {
      const refrigerant = computed(name)
      const lines = saturationAtPressure(refrigerant, pascal(8e5))
      const first = stateAtQuality(refrigerant, pascal(8e5), 0)
      const last = stateAtQuality(refrigerant, pascal(8e5), 1)
      if (!lines.ok || !first.ok || !last.ok) throw new Error('no state')
      expect(first.value.enthalpy_J_kg).toBeCloseTo(lines.value.bubble.enthalpy_J_kg, 2)
      expect(last.value.enthalpy_J_kg).toBeCloseTo(lines.value.dew.enthalpy_J_kg, 2)
      expect(first.value).not.toHaveProperty('cp_J_kgK')
    }
  })

  it('[limit] on the line of a pure fluid it asks for a quality', () => {
    const refrigerant = computed('R-134a')
    const lines = saturationAtPressure(refrigerant, pascal(5e5))
    if (!lines.ok) throw new Error('no saturation')
    const state = stateAt(refrigerant, pascal(5e5), kelvin(lines.value.bubble.temperature_K))
    expect(state).toMatchObject({
      ok: false,
      error: { kind: 'ambiguous', accepted: expect.stringContaining('quality') },
    })
  })

  it('[limit] supercritical carbon dioxide has a state, its critical point has not', () => {
    expect(at('CO2', 10e6, 313.15)).toMatchObject({ phase: 'supercritical' })
    expect(at('CO2', 10e6, 300)).toMatchObject({ phase: 'liquid' })
    expect(at('CO2', 5e6, 350)).toMatchObject({ phase: 'vapour' })
    expect(stateAt(computed('CO2'), pascal(7.377e6), kelvin(304.1))).toMatchObject({
      ok: false,
      error: { kind: 'unsolved', accepted: expect.stringContaining('critical point of R-744') },
    })
  })

  it('[limit] no pressure and no temperature outside the range', () => {
    const refrigerant = computed('R-32')
    for (const p of [0, 1e-6, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e12]) {
      expect(stateAt(refrigerant, pascal(p), kelvin(300))).toMatchObject({
        ok: false,
        error: { kind: 'out-of-range', field: 'pressure', min: 1e-5 },
      })
    }
    expect(stateAt(refrigerant, pascal(1e5), kelvin(10))).toMatchObject({ ok: false, error: { field: 'temperature' } })
    expect(stateAtQuality(refrigerant, pascal(1e5), 1.1)).toMatchObject({
      ok: false,
      error: { field: 'quality', max: 1 },
    })
  })

  it('[limit] a thin gas is ideal', () => {
    const { density_kg_m3, cp_J_kgK, speedOfSound_m_s } = at('R-290', 1, 300)
    const M = 0.04409562
    const R = 8.314472
    expect(density_kg_m3 / (M / (R * 300))).toBeCloseTo(1, 6)
    const gamma = cp_J_kgK! / (cp_J_kgK! - R / M)
    expect(speedOfSound_m_s! / Math.sqrt((gamma * R * 300) / M)).toBeCloseTo(1, 6)
  })
})
