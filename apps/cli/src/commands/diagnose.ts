import { type WeighedCauses, weighedCauses } from '@chargewright/charging'
import type { Memory } from '@chargewright/diagnosis'
import { fail, ok, type Problem, type Result, type Statement, say } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import { checkVisitFile, fold, type Visit } from '@chargewright/visit'

/** The causes of what was read, weighed; or in words why they cannot be. */
export interface DiagnoseAnswer {
  readonly visit: Visit
  readonly weighed: Result<WeighedCauses, Statement>
}

/**
 * @param data a visit file, as its JSON was parsed
 * @param memory what earlier visits taught about this system
 */
export function diagnose(data: unknown, memory?: Memory): Result<DiagnoseAnswer, readonly Problem[]> {
  const file = checkVisitFile(data)
  if (!file.ok) return file
  const visit = fold(file.value)
  const { refrigerant: name } = visit.system.facts
  const refrigerant = name === undefined ? undefined : findRefrigerant(name)
  if (!refrigerant?.ok) return ok({ visit, weighed: fail(say`the refrigerant is not known`) })
  return ok({ visit, weighed: weighedCauses({ visit, refrigerant: refrigerant.value }, memory) })
}
