import { add, evidence, type Quantity, say } from '@chargewright/quantity'
import { lastChange, observationKind, type Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'
import { LIMITS } from '../limit.ts'
import { typedIn } from '../measures/typed-in.ts'
import { readAgain } from './read-again.ts'

const { boxAboveSetPoint } = LIMITS

const FORCE_IT = say`Force a high load: hold the doors open or warm the box, until the valve stands wide open; then look again`

/** A sight glass tells something only while the valve stands wide open: doors open, false load, or a warm box. */
export function load(visit: Visit): Condition {
  const change = lastChange(visit)?.position ?? -1
  const observed = visit.observations.load
  if (observed && observed.answer !== 'normal' && observed.position < change) {
    return {
      id: 'load',
      state: 'unknown',
      evidence: {
        ...evidence(say`The load was high before the last change; nothing tells whether it still is`),
        eventId: observed.eventId,
      },
      remedy: FORCE_IT,
      next: { entry: { kind: 'observation', what: 'load' }, why: say`it was seen before the last change` },
    }
  }
  if (observed && observed.answer !== 'normal') {
    const answer = observationKind('load').answers[observed.answer] ?? observed.answer
    return {
      id: 'load',
      state: 'met',
      evidence: { ...evidence(say`The load is high: ${answer}`), eventId: observed.eventId },
    }
  }
  const box = visit.readings['box-temperature']
  const setPoint = visit.system.figures.boxSetPoint
  if (!box || !setPoint) {
    return {
      id: 'load',
      state: observed ? 'unmet' : 'unknown',
      evidence: evidence(
        observed
          ? say`The load is as found, and nothing shows that it is high`
          : say`Nothing tells whether the load is high`,
      ),
      remedy: FORCE_IT,
      next: box
        ? { entry: { kind: 'figure', what: 'boxSetPoint' }, why: say`box against set point tells the load` }
        : { entry: { kind: 'observation', what: 'load' }, why: say`a glass is judged only under high load` },
    }
  }
  const warm = add(setPoint.quantity as Quantity<'temperature'>, boxAboveSetPoint.quantity)
  const high = box.quantity.si >= warm.si
  const from = [
    typedIn(box),
    { ...evidence(say`set point ${setPoint.quantity}, typed “${setPoint.typed}”`), eventId: setPoint.eventId },
  ]
  const statement = high
    ? say`The box stands at least ${boxAboveSetPoint.quantity} above its set point: the valve is wide open`
    : say`The box is within ${boxAboveSetPoint.quantity} of its set point: the valve is throttling`
  return {
    id: 'load',
    state: high ? 'met' : 'unmet',
    evidence: evidence(statement, boxAboveSetPoint.source, from),
    ...(high ? {} : { remedy: FORCE_IT, again: readAgain(visit, ['box-temperature']) }),
  }
}
