import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import type { Observation, Visit } from '@chargewright/visit'
import { assess } from './assess.ts'
import type { Assessment, Target } from './assessment.ts'
import { entryLabel } from './entry-label.ts'
import type { Accessory } from './weigh-in/accessory-charge.ts'
import { type MeasuredOut, measuredOut, type WeighingGear } from './weigh-in/measured-out.ts'
import { type ProcedureStep, weighInProcedure } from './weigh-in/procedure.ts'

/** What to weigh in, and how, step by step. */
export interface VisitWeighIn {
  readonly charge: Target
  /** What is still to go in; absent where it is in, or where something else comes first. */
  readonly toGoIn?: Quantity<'mass'>
  /** What scale, hose and charging cylinder make of that. */
  readonly measured?: MeasuredOut
  readonly procedure: readonly ProcedureStep[]
  readonly assessment: Assessment
  /** The system still holds a charge: the answer is for when it is empty. */
  readonly stillCharged: boolean
}

/**
 * The charge by weight of the system of a visit. One that is not yet empty is asked about as it will be.
 *
 * @param gear with what the charge is measured out
 * @param accessories parts that were added beside those that the visit states
 * @returns else what is missing or cannot be read
 */
export function weighInOfVisit(
  visit: Visit,
  gear: WeighingGear = {},
  accessories: readonly Accessory[] = [],
): Result<VisitWeighIn, readonly Problem[]> {
  const state = visit.observations['charge-state']?.answer
  const stillCharged = state !== 'evacuated' && state !== 'lost'
  const assessment = assess(stillCharged ? emptied(visit) : visit, accessories)
  const { finding, target } = assessment
  const { refrigerant: name, meteringDevice } = visit.system.facts
  if (name === undefined) return fail([missing('refrigerant', 'the one on the nameplate')])
  const refrigerant = findRefrigerant(name)
  if (!refrigerant.ok) return fail([refrigerant.error])
  if (!target) return fail([...assessment.problems.map(({ problem }) => problem), ...whatIsMissing(assessment)])
  const toGoIn = finding.dose?.direction === 'into-system' ? finding.dose.mass : undefined
  const charge = toGoIn ?? (target.quantity as Quantity<'mass'>)
  const tolerance = target.tolerance.quantity as Quantity<'mass'>
  const procedure = weighInProcedure({
    charge,
    tolerance,
    refrigerant: refrigerant.value,
    ...(meteringDevice && { meteringDevice }),
  })
  const measured = toGoIn && measuredOut(refrigerant.value, toGoIn, tolerance, gear)
  if (measured && !measured.ok) return fail([measured.error])
  return ok({
    charge: target,
    ...(toGoIn && { toGoIn }),
    ...(measured && { measured: measured.value }),
    // One that is empty already need not be emptied.
    procedure: toGoIn ? procedure.filter(({ id }) => stillCharged || id !== 'empty') : [],
    assessment,
    stillCharged,
  })
}

/** The visit as it will be when the system is empty: nothing has been weighed in since. */
function emptied(visit: Visit): Visit {
  const last = visit.log.at(-1)
  const empty: Observation<'charge-state'> = {
    what: 'charge-state',
    answer: 'evacuated',
    eventId: 'not entered yet',
    at: last?.at ?? '',
    position: (last?.position ?? -1) + 1,
  }
  return { ...visit, observations: { ...visit.observations, 'charge-state': empty } }
}

const missing = (field: string, accepted: string): Problem => ({ kind: 'missing', field, value: 'nothing', accepted })

function whatIsMissing({ finding }: Assessment): readonly Problem[] {
  const entries = finding.next.map(({ entry }) => missing(entryLabel(entry), 'an entry of it'))
  return entries.length > 0
    ? entries
    : [missing('charge', 'a system that is charged by weight, with its nameplate charge')]
}
