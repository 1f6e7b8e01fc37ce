import { kelvin, pascal } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computed, everyRefrigerant } from '../test/computed.ts'
import { saturationAtPressure, saturationAtTemperature } from './saturation.ts'

describe('saturation', () => {
  it('[property] temperature to pressure and back returns the start, bubble below dew', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...everyRefrigerant()),
        fc.double({ min: 0.02, max: 0.97, noNaN: true }),
        (refrigerant, share) => {
          const { minTemperature_K, maxTemperature_K } = refrigerant.engine.limits.saturation
          const T = minTemperature_K + share * (maxTemperature_K - minTemperature_K)
          const forward = saturationAtTemperature(refrigerant, kelvin(T))
          if (!forward.ok) throw new Error(JSON.stringify(forward.error))
          const { bubble, dew } = forward.value
          expect(dew.pressure_Pa).toBeLessThanOrEqual(bubble.pressure_Pa * (1 + 1e-9))
          expect(dew.density_kg_m3).toBeLessThan(bubble.density_kg_m3)
          const back = saturationAtPressure(refrigerant, pascal(bubble.pressure_Pa))
          if (!back.ok) throw new Error(JSON.stringify(back.error))
          expect(Math.abs(back.value.bubble.temperature_K - T)).toBeLessThan(1e-6)
          expect(Math.abs(back.value.bubble.density_kg_m3 / bubble.density_kg_m3 - 1)).toBeLessThan(1e-7)
        },
      ),
      { numRuns: 2_000, seed: 1 },
    )
  })

  it('[property] of a pure fluid: heat of evaporation is T·Δs', () => {
    const at = saturationAtTemperature(computed('R-290'), kelvin(280))
    if (!at.ok) throw new Error('no saturation')
    const { bubble, dew } = at.value
    expect(dew.pressure_Pa).toBe(bubble.pressure_Pa)
    const heat = dew.enthalpy_J_kg - bubble.enthalpy_J_kg
    expect(280 * (dew.entropy_J_kgK - bubble.entropy_J_kgK)).toBeCloseTo(heat, 2)
  })

  it('[published] the reference: saturated liquid at 0 °C has 200 kJ/kg and 1 kJ/(kg·K)', () => {
    for (const name of ['R-22', 'R-744', 'R-717', 'R-407C', 'R-455A']) {
      const at = saturationAtTemperature(computed(name), kelvin(273.15))
      if (!at.ok) throw new Error('no saturation')
      expect(at.value.bubble.enthalpy_J_kg).toBeCloseTo(200_000, 3)
      expect(at.value.bubble.entropy_J_kgK).toBeCloseTo(1_000, 6)
    }
  })

  it('[limit] too cold, too hot and too high are told with the range', () => {
    const refrigerant = computed('R-410A')
    const hot = saturationAtTemperature(refrigerant, kelvin(350))
    expect(hot).toMatchObject({
      ok: false,
      error: { kind: 'out-of-range', field: 'temperature', value: 350, unit: 'K' },
    })
    if (!hot.ok && hot.error.kind === 'out-of-range')
      expect(hot.error.max).toBeCloseTo(0.998 * refrigerant.critical.temperature_K, 9)
    expect(saturationAtTemperature(refrigerant, kelvin(100))).toMatchObject({
      ok: false,
      error: { kind: 'out-of-range' },
    })
    expect(saturationAtPressure(refrigerant, pascal(1e7))).toMatchObject({
      ok: false,
      error: { field: 'pressure', unit: 'Pa' },
    })
    expect(saturationAtPressure(refrigerant, pascal(Number.NaN))).toMatchObject({
      ok: false,
      error: { kind: 'out-of-range' },
    })
  })
})
