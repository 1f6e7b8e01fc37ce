import { describe, expect, test } from 'vitest'
import { saturation } from './saturation.ts'

const answer = (question: Parameters<typeof saturation>[0]) => {
  const answered = saturation(question)
  if (!answered.ok) throw new Error(answered.error.kind)
  return answered.value
}

const PSI_Pa = 6894.757
const ATMOSPHERE_Pa = 101_325

// U.S. Army TM 9-4120-389-14, p. 5-42, status READ: 69 psig on R-22 is 40 °F. The manual rounds to 1 psi and 1 °F.
test('[published] R-22 at 69 psig saturates at 40 °F, as a service manual prints it', () => {
  const { dew } = answer({ refrigerant: 'R-22', pressure_Pa: 69 * PSI_Pa + ATMOSPHERE_Pa })
  expect(Math.abs(dew.temperature_K * 1.8 - 459.67 - 40)).toBeLessThan(0.5)
})

describe('the answer', () => {
  test('[property] names the refrigerant by its designation and has the keys that are documented, and no others', () => {
    const point = ['pressure_Pa', 'temperature_K', 'density_kg_m3', 'enthalpy_J_kg', 'entropy_J_kgK']
    const { refrigerant, bubble, dew, ...more } = answer({ refrigerant: 'propane', temperature_K: 280 })
    expect(refrigerant).toBe('R-290')
    expect(Object.keys(bubble)).toEqual(point)
    expect(Object.keys(dew)).toEqual(point)
    expect(more).toEqual({})
  })

  test('[property] of a blend, the dew temperature lies above the bubble temperature at one pressure', () => {
    const { bubble, dew } = answer({ refrigerant: 'R-407C', pressure_Pa: 900e3 })
    expect(dew.temperature_K - bubble.temperature_K).toBeGreaterThan(4)
  })
})

test.each([
  [{}, 'missing', 'refrigerant'],
  [{ refrigerant: 'R-32' }, 'missing', 'pressure or temperature'],
  [{ refrigerant: 'R-32', pressure_Pa: 1e6, temperature_K: 280 }, 'unreadable', 'temperature'],
  [{ refrigerant: 'R-99999', pressure_Pa: 1e6 }, 'unknown', 'refrigerant'],
  [{ refrigerant: 'R-32', pressure_Pa: -1 }, 'out-of-range', 'pressure'],
  [{ refrigerant: 'R-32', pressure_Pa: Number.NaN }, 'out-of-range', 'pressure'],
  [{ refrigerant: 'R-32', temperature_K: Number.POSITIVE_INFINITY }, 'out-of-range', 'temperature'],
])('[limit] %j is a problem that names the field', (question, kind, field) => {
  expect(saturation(question)).toMatchObject({ ok: false, error: { kind, field } })
})
