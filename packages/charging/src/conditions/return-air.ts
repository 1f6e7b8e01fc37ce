import { evidence, say } from '@chargewright/quantity'
import { lastChange, type ReadingId, type Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'

const RETURN_AIR: readonly ReadingId[] = ['return-air-wet-bulb', 'return-air-dry-bulb', 'return-air-humidity']

/** The house cools while one charges, and the target with it: return air from before the last change is a doubt. */
export function returnAir(visit: Visit): readonly Condition[] {
  const change = lastChange(visit)
  const old = RETURN_AIR.flatMap((id) => visit.readings[id] ?? []).find((r) => change && r.position < change.position)
  if (!old) return []
  return [
    {
      id: 'return-air',
      state: 'doubtful',
      evidence: {
        ...evidence(
          say`The return air was read before the last change, and it cools as the system runs`,
          'common practice',
        ),
        eventId: old.eventId,
      },
      next: { entry: { kind: 'reading', what: old.what }, why: say`was read before the last change` },
    },
  ]
}
