import { evidence, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'
import { LIMITS } from '../limit.ts'
import { equalising } from '../timed.ts'

const { equaliseTime } = LIMITS

/**
 * After liquid went into a stopped system it rests about 10 minutes before the compressor starts. Asked only while
 * nothing after the move says that it did.
 */
export function equalised(visit: Visit): readonly Condition[] {
  const move = visit.moves.findLast(
    ({ fact }) => fact.direction === 'into-system' && fact.phase === 'liquid' && fact.compressor === 'stopped',
  )
  const ran = visit.observations['running-time']
  if (!move || (ran?.answer === 'settled' && ran.position > move.position)) return []
  const waited = visit.waits
    .filter((wait) => wait.position > move.position)
    .reduce((sum, wait) => sum + wait.duration.si, 0)
  const met = waited >= equaliseTime.quantity.si
  const statement = met
    ? say`The system rested ${equaliseTime.quantity} after liquid went in`
    : say`Liquid went into the stopped system; it has not rested ${equaliseTime.quantity} since`
  return [
    {
      id: 'equalised',
      state: met ? 'met' : 'unmet',
      evidence: { ...evidence(statement, equaliseTime.source), eventId: move.eventId },
      ...(met
        ? {}
        : {
            remedy: equalising(
              say`Leave the compressor off ${equaliseTime.quantity} so that the pressures equalise, then start`,
            ),
          }),
    },
  ]
}
