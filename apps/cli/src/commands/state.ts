import { fail, kelvin, ok, type Problem, pascal, type Result } from '@chargewright/quantity'
import { findRefrigerant, type State, stateAt, stateAtQuality } from '@chargewright/refrigerant'
import { missing, unreadable } from '../failure.ts'
import { withNearNames } from '../near-names.ts'

/** What is asked: the state at a pressure (absolute) and a temperature, or at a pressure and a share of vapour. */
export interface StateQuestion {
  readonly refrigerant?: string
  readonly pressure_Pa?: number
  readonly temperature_K?: number
  /** Mass of vapour per mass, 0 to 1. */
  readonly quality?: number
}

export const STATE_FIELDS = {
  refrigerant: 'text',
  pressure_Pa: 'number',
  temperature_K: 'number',
  quality: 'number',
} as const

/** The answer, in the very keys that `--json` prints; specific heat and speed of sound exist in one phase only. */
export interface StateAnswer {
  readonly refrigerant: string
  readonly phase: State['phase']
  readonly pressure_Pa: number
  readonly temperature_K: number
  readonly density_kg_m3: number
  readonly enthalpy_J_kg: number
  readonly entropy_J_kgK: number
  readonly cp_J_kgK?: number
  readonly speed_of_sound_m_s?: number
  readonly quality?: number
}

export function state(question: StateQuestion): Result<StateAnswer, Problem> {
  const { refrigerant, pressure_Pa, temperature_K, quality } = question
  if (refrigerant === undefined) return fail(missing('refrigerant', 'a refrigerant, such as R-410A'))
  if (pressure_Pa === undefined) return fail(missing('pressure', 'a pressure'))
  const found = withNearNames(findRefrigerant(refrigerant))
  if (!found.ok) return found
  if (temperature_K !== undefined && quality !== undefined) {
    return fail(unreadable('quality', String(quality), 'the temperature or the quality, not both'))
  }
  const solved =
    temperature_K !== undefined
      ? stateAt(found.value, pascal(pressure_Pa), kelvin(temperature_K))
      : quality !== undefined
        ? stateAtQuality(found.value, pascal(pressure_Pa), quality)
        : fail(missing('temperature', 'a temperature, or the quality of a two-phase state'))
  return solved.ok ? ok(answer(found.value.name, solved.value)) : solved
}

function answer(refrigerant: string, state: State): StateAnswer {
  const { phase, pressure_Pa, temperature_K, density_kg_m3, enthalpy_J_kg, entropy_J_kgK } = state
  const { cp_J_kgK, speedOfSound_m_s, quality } = state
  return {
    ...{ refrigerant, phase, pressure_Pa, temperature_K, density_kg_m3, enthalpy_J_kg, entropy_J_kgK },
    ...(cp_J_kgK === undefined ? {} : { cp_J_kgK }),
    ...(speedOfSound_m_s === undefined ? {} : { speed_of_sound_m_s: speedOfSound_m_s }),
    ...(quality === undefined ? {} : { quality }),
  }
}
