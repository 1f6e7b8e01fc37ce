import { evidence, say } from '@chargewright/quantity'
import type { LookAlike } from '../assessment.ts'
import type { Case } from '../ruling.ts'

/** A charge that went missing left through a leak; weighing in anew would only lose it again. */
export function lostCharge({ visit }: Case): LookAlike | undefined {
  const state = visit.observations['charge-state']
  const leak = visit.observations.leak
  if (state?.answer !== 'lost' && leak?.answer !== 'found') return undefined
  const seen =
    leak?.answer === 'found'
      ? { ...evidence(say`A leak was found and is not repaired`), eventId: leak.eventId }
      : {
          ...evidence(say`The charge went missing suddenly: it left through a leak`, 'common practice'),
          eventId: state!.eventId,
        }
  return { id: 'leak', label: say`a leak`, verdict: 'explains', seen: true, evidence: seen }
}
