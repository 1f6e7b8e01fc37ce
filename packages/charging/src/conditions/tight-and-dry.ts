import { evidence, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'

/**
 * What goes into an empty system stays there only if it is tight and dry. Where a leak emptied it, the repair must be
 * told; that no test is in the log is a doubt and no obstacle, because it may have been made before this visit.
 */
export function tightAndDry(visit: Visit): readonly Condition[] {
  if (visit.observations['charge-state']?.answer !== 'evacuated') return []
  const { leak } = visit.observations
  const lost = visit.log.find(
    ({ holds }) => holds?.kind === 'observation' && holds.what === 'charge-state' && holds.answer === 'lost',
  )
  if (lost && !leak) {
    return [
      {
        id: 'tight-and-dry',
        state: 'unknown',
        evidence: {
          ...evidence(say`The charge was lost, and nothing tells that the leak is repaired`),
          eventId: lost.id,
        },
        remedy: say`Find the leak and repair it; what is weighed in would leave the same way`,
        next: { entry: { kind: 'observation', what: 'leak' }, why: say`whether the leak was found and repaired` },
      },
    ]
  }
  const missing = [
    ...(visit.pressureTests.length === 0 ? [evidence(say`No pressure test is in the log`)] : []),
    ...(visit.vacuumTests.length === 0 ? [evidence(say`No vacuum test is in the log`)] : []),
  ]
  const [first] = missing
  if (!first) {
    return [
      {
        id: 'tight-and-dry',
        state: 'met',
        evidence: evidence(say`A pressure test and a vacuum test are in the log`),
      },
    ]
  }
  return [
    {
      id: 'tight-and-dry',
      state: 'doubtful',
      evidence: missing.length === 1 ? first : evidence(say`Neither a pressure test nor a vacuum test is in the log`),
      remedy: say`Stand it under dry nitrogen, then hold it under vacuum, and enter both`,
    },
  ]
}
