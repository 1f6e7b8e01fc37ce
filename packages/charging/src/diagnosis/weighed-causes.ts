import { type Diagnosis, diagnose, type Knowledge, type Memory, SHIPPED_CALIBRATION } from '@chargewright/diagnosis'
import { describeProblem, fail, ok, type Result, type Statement, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { judgeSpecificAirflow } from '../conditions/airflow.ts'
import { type Decision, decide } from '../decision/index.ts'
import { airflowPerCapacity } from '../measures/airflow-per-capacity.ts'
import type { Case } from '../ruling.ts'
import { circuitReadings } from './circuit-readings.ts'
import { familyOfSystem } from './family-of-system.ts'

/** Every cause weighed by what was read, and the act of least expected loss. */
export interface WeighedCauses {
  readonly diagnosis: Diagnosis
  readonly decision: Decision
}

/**
 * Weighs the causes of what was read on this very system; or says in words why that cannot be done: facts are missing or
 * contradict each other, a receiver hides the charge, too little was read, or the model has no such state.
 */
export function weighedCauses(
  { visit, refrigerant }: Pick<Case, 'visit' | 'refrigerant'>,
  memory?: Memory,
): Result<WeighedCauses, Statement> {
  if (visit.system.facts.receiver) return fail(say`a receiver hides the charge, so the readings do not answer to it`)
  const family = familyOfSystem(visit.system)
  if (!family.ok) {
    return fail(say`the facts do not make a model of this system (${family.error.map(describeProblem).join('; ')})`)
  }
  const sets = circuitReadings({ visit, refrigerant })
  const [first] = sets
  if (!first) {
    return fail(say`suction pressure, outdoor temperature and return air with its wet bulb were never read together`)
  }
  const knowledge: Knowledge = {
    calibration: SHIPPED_CALIBRATION,
    maker: first.maker,
    ruledOut: isAirflowRight(visit) ? ['low-indoor-air'] : [],
    ...(memory ? { memory } : {}),
  }
  const diagnosis = diagnose(family.value, sets, knowledge)
  if (!diagnosis.ok) return fail(say`the model of this system has no answer (${describeProblem(diagnosis.error)})`)
  // Readings that fit no cause are no ground for any act, nor for the sign rules, which cannot see that.
  const decision: Decision = diagnosis.value.misfit.unexplained
    ? { kind: 'undecided', losses: {} }
    : decide(diagnosis.value, { rightCharge_kg: family.value.nominal.rated.charge_kg, hasReceiver: false })
  return ok({ diagnosis: diagnosis.value, decision })
}

/** Measured itself, and within its usual band: the readings of the circuit need not be asked about it. */
function isAirflowRight(visit: Visit): boolean {
  const measured = airflowPerCapacity(visit)
  return measured !== undefined && judgeSpecificAirflow(measured).state === 'met'
}
