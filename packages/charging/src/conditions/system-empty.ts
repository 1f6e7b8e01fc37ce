import { evidence, say } from '@chargewright/quantity'
import type { Condition } from '../assessment.ts'
import type { Case } from '../ruling.ts'

/** A charge is weighed into an empty, evacuated system only. */
export function systemEmpty({ visit }: Case): Condition {
  const state = visit.observations['charge-state']
  switch (state?.answer) {
    case 'evacuated':
      return {
        id: 'system-empty',
        state: 'met',
        evidence: {
          ...evidence(
            visit.moves.some(({ position }) => position > state.position)
              ? say`The system was empty and evacuated before it was weighed in`
              : say`The system is empty and evacuated`,
          ),
          eventId: state.eventId,
        },
      }
    case 'charged':
      return {
        id: 'system-empty',
        state: 'unmet',
        evidence: { ...evidence(say`The system still holds a charge of unknown weight`), eventId: state.eventId },
        remedy: say`Recover all of it and weigh it, leak check, evacuate, then weigh in the right charge`,
      }
    case 'lost':
      return {
        id: 'system-empty',
        state: 'unmet',
        evidence: { ...evidence(say`The charge was lost; what is left is not known`), eventId: state.eventId },
        remedy: say`Recover what is left, repair the leak, leak check and evacuate first`,
      }
    default:
      return {
        id: 'system-empty',
        state: 'unknown',
        evidence: evidence(say`Nothing tells whether the system is empty`),
        remedy: say`A charge is weighed into an empty, evacuated system only`,
        next: {
          entry: { kind: 'observation', what: 'charge-state' },
          why: say`whether to recover first or to weigh in`,
        },
      }
  }
}
