import { evidence, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'
import { LIMITS } from '../limit.ts'
import { typedIn } from '../measures/typed-in.ts'

const { outdoorRefused, outdoorWarned } = LIMITS

/** Superheat can set a charge only when it is warm enough outdoors: refused below 55 °F, warned below 60 °F. */
export function outdoorTemperature(visit: Visit): Condition {
  const reading = visit.readings['condenser-entering-air']
  if (!reading) {
    return {
      id: 'outdoor-temperature',
      state: 'unknown',
      evidence: evidence(say`The air entering the condenser was not read`),
      next: { entry: { kind: 'reading', what: 'condenser-entering-air' }, why: say`the superheat target hangs on it` },
    }
  }
  const T = reading.quantity.si
  const from = [typedIn(reading)]
  if (T < outdoorRefused.quantity.si) {
    return {
      id: 'outdoor-temperature',
      state: 'unmet',
      evidence: evidence(
        say`It is colder outdoors than ${outdoorRefused.quantity}: superheat tells nothing about the charge`,
        outdoorRefused.source,
        from,
      ),
      remedy: say`Recover, evacuate and weigh in the nameplate charge, or come back on a warmer day`,
    }
  }
  if (T < outdoorWarned.quantity.si) {
    return {
      id: 'outdoor-temperature',
      state: 'doubtful',
      evidence: evidence(
        say`It is colder outdoors than ${outdoorWarned.quantity}: the superheat method is near its limit`,
        outdoorWarned.source,
        from,
      ),
    }
  }
  return {
    id: 'outdoor-temperature',
    state: 'met',
    evidence: evidence(say`It is warm enough outdoors`, outdoorRefused.source, from),
  }
}
