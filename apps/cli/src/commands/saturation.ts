import { fail, kelvin, ok, type Problem, pascal, type Result } from '@chargewright/quantity'
import {
  findRefrigerant,
  type SaturationPoint,
  saturationAtPressure,
  saturationAtTemperature,
} from '@chargewright/refrigerant'
import { missing, unreadable } from '../failure.ts'
import { withNearNames } from '../near-names.ts'

/** What is asked: the bubble and the dew point at one pressure (absolute), or at one temperature. */
export interface SaturationQuestion {
  readonly refrigerant?: string
  readonly pressure_Pa?: number
  readonly temperature_K?: number
}

export const SATURATION_FIELDS = { refrigerant: 'text', pressure_Pa: 'number', temperature_K: 'number' } as const

/** The answer, in the very keys that `--json` prints. A pure fluid has one pressure and temperature, and two densities. */
export interface SaturationAnswer {
  readonly refrigerant: string
  readonly bubble: SaturationPoint
  readonly dew: SaturationPoint
}

export function saturation(question: SaturationQuestion): Result<SaturationAnswer, Problem> {
  const { pressure_Pa, temperature_K } = question
  if (question.refrigerant === undefined) return fail(missing('refrigerant', 'a refrigerant, such as R-410A'))
  const found = withNearNames(findRefrigerant(question.refrigerant))
  if (!found.ok) return found
  if (pressure_Pa !== undefined && temperature_K !== undefined)
    return fail(unreadable('temperature', `${temperature_K} K`, 'the pressure or the temperature, not both'))
  const solved =
    pressure_Pa !== undefined
      ? saturationAtPressure(found.value, pascal(pressure_Pa))
      : temperature_K !== undefined
        ? saturationAtTemperature(found.value, kelvin(temperature_K))
        : fail(missing('pressure or temperature', 'one of the two'))
  if (!solved.ok) return solved
  const { bubble, dew } = solved.value
  return ok({ refrigerant: found.value.name, bubble: point(bubble), dew: point(dew) })
}

/** The keys in the order in which they are printed, and no others. */
function point({ pressure_Pa, temperature_K, density_kg_m3, enthalpy_J_kg, entropy_J_kgK }: SaturationPoint) {
  return { pressure_Pa, temperature_K, density_kg_m3, enthalpy_J_kg, entropy_J_kgK }
}
