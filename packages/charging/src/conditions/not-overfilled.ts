import { evidence, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'

/**
 * More than the whole nameplate charge in one go, by a slip of the hand or truly: until that is corrected or taken out again
 * nothing is run, nor waited for. Nothing where it is not so.
 */
export function notOverfilled(visit: Visit): readonly Condition[] {
  const last = visit.moves.at(-1)
  if (last?.fact.direction !== 'into-system') return []
  const isDoubted = visit.doubts.some(
    ({ eventId, problem }) => eventId === last.eventId && problem.kind === 'out-of-range',
  )
  if (!isDoubted) return []
  return [
    {
      id: 'not-overfilled',
      state: 'unmet',
      evidence: { ...evidence(say`More went in at once than the whole nameplate charge`), eventId: last.eventId },
      remedy: say`Stop the compressor, and do not start it: correct the entry in the log, or recover what is too much`,
    },
  ]
}
