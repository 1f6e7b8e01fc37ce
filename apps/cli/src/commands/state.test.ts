import { expect, test } from 'vitest'
import { type StateQuestion, state } from './state.ts'

const answer = (question: StateQuestion) => {
  const answered = state(question)
  if (!answered.ok) throw new Error(answered.error.kind)
  return answered.value
}

const COMMON = [
  'refrigerant',
  'phase',
  'pressure_Pa',
  'temperature_K',
  'density_kg_m3',
  'enthalpy_J_kg',
  'entropy_J_kgK',
] as const

test('[property] a single phase has a specific heat and a speed of sound, and no quality', () => {
  const vapour = answer({ refrigerant: 'R-410A', pressure_Pa: 900e3, temperature_K: 300 })
  expect(vapour.phase).toBe('vapour')
  expect(Object.keys(vapour)).toEqual([...COMMON, 'cp_J_kgK', 'speed_of_sound_m_s'])
})

test('[property] two phases have a quality, and neither specific heat nor speed of sound', () => {
  const mixed = answer({ refrigerant: 'R-22', pressure_Pa: 577e3, quality: 0.2 })
  expect(mixed).toMatchObject({ phase: 'two-phase', quality: 0.2 })
  expect(Object.keys(mixed)).toEqual([...COMMON, 'quality'])
})

test.each<[StateQuestion, string, string]>([
  [{}, 'missing', 'refrigerant'],
  [{ refrigerant: 'R-32' }, 'missing', 'pressure'],
  [{ refrigerant: 'R-32', pressure_Pa: 1e6 }, 'missing', 'temperature'],
  [{ refrigerant: 'R-32', pressure_Pa: 1e6, temperature_K: 280, quality: 0.5 }, 'unreadable', 'quality'],
  [{ refrigerant: 'R-99999', pressure_Pa: 1e6, temperature_K: 280 }, 'unknown', 'refrigerant'],
  [{ refrigerant: 'R-32', pressure_Pa: 1e6, quality: 1.1 }, 'out-of-range', 'quality'],
  [{ refrigerant: 'R-32', pressure_Pa: 1e99, temperature_K: 280 }, 'out-of-range', 'pressure'],
  [{ refrigerant: 'R-32', pressure_Pa: 1e6, temperature_K: Number.NaN }, 'out-of-range', 'temperature'],
])('[limit] %j is a problem that names the field', (question, kind, field) => {
  expect(state(question)).toMatchObject({ ok: false, error: { kind, field } })
})
