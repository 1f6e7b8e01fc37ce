import { evidence, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'

/**
 * More than the whole nameplate charge in one go, by a slip of the hand or truly: until that is corrected or taken out again
 * nothing is run, nor waited for. Nothing where it is not so.
 */
export function notOverfilled(visit: Visit): readonly Condition[] {
  const most = visit.system.figures.nameplateCharge?.quantity.si
  const at = visit.moves.findLastIndex(
    (move) =>
      move.fact.direction === 'into-system' &&
      visit.doubts.some(({ eventId, problem }) => eventId === move.eventId && problem.kind === 'out-of-range'),
  )
  const doubted = visit.moves[at]
  if (!doubted || most === undefined) return []
  const left = visit.moves
    .slice(at)
    .reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)
  if (left <= most) return []
  return [
    {
      id: 'not-overfilled',
      state: 'unmet',
      evidence: { ...evidence(say`More went in at once than the whole nameplate charge`), eventId: doubted.eventId },
      remedy: say`Stop the compressor, and do not start it: correct the entry in the log, or recover what is too much`,
    },
  ]
}
