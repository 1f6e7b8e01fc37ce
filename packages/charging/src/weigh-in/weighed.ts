import {
  COVERAGE,
  type Evidence,
  evidence,
  type Measure,
  type Quantity,
  quantity,
  type Statement,
  say,
} from '@chargewright/quantity'
import type { Dose, Finding, Step } from '../assessment.ts'
import { LIMITS, type Limit } from '../limit.ts'
import type { Case } from '../ruling.ts'
import { CAP, hold } from '../sentence.ts'
import { equalising, settling } from '../timed.ts'
import { type ProcedureStep, SEAL, weighInProcedure } from './procedure.ts'

type Mass = Quantity<'mass'>

/** What belongs in, and how far off it still counts as right. */
export interface ChargeTarget extends Measure<Mass> {
  readonly tolerance: Limit<'mass'>
}

/** What was weighed in since the system was emptied, against what belongs in. */
export function weighed(asked: Case, total: ChargeTarget): Finding {
  const { visit } = asked
  const { tolerance } = total
  const emptied = visit.observations['charge-state']?.position ?? -1
  const moves = visit.moves.filter((move) => move.position > emptied)
  const net = moves.reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)
  const u = Math.hypot(...moves.map(({ mass }) => mass.u ?? 0))
  const left = quantity('mass', Math.abs(total.quantity.si - net), u)
  const inSoFar = moves.length > 0 ? [evidence(say`Weighed in so far ${quantity('mass', net, u)}`)] : []

  if (left.si <= tolerance.quantity.si) {
    if (COVERAGE * u > tolerance.quantity.si) return tooCoarse(asked, u, tolerance.quantity, inSoFar)
    return hold(
      evidence(say`The weighed charge is within ${tolerance.quantity} of ${total.quantity}`, tolerance.source, [
        total.evidence,
        ...inSoFar,
      ]),
      [],
      visit.system.facts.meteringDevice === 'capillary' ? [START, SEAL, CHECK_SEAL] : [START, CAP],
    )
  }
  const mass = quantity('mass', left.si)
  const under = total.quantity.si > net
  const reason = evidence(under ? say`${mass} are still to go in` : say`${mass} too much went in`, undefined, [
    total.evidence,
    ...inSoFar,
  ])
  const resolve = evidence(say`The scale must resolve ${tolerance.quantity}`, tolerance.source)
  return under ? weighIn(asked, mass, tolerance.quantity, reason, resolve) : takeOut(mass, reason, resolve)
}

const START = say`If it has not run yet: give the power back, start it, let it run ${LIMITS.settleTime.quantity} and see that it cools`
/** A sealed system is left without ports. */
const CHECK_SEAL = say`Check the seal for leaks and sign the record`

/** Of a scale that nobody described a plain one is assumed: then it is that which is asked for, and not the charge back. */
function tooCoarse({ visit }: Case, u: number, tolerance: Mass, inSoFar: readonly Evidence[]): Finding {
  const isAssumed = visit.moves.every(({ fact }) => fact.instrument === undefined)
  return {
    kind: 'cannot-tell',
    sentence: say`The scale is too coarse for this charge`,
    reasons: [
      evidence(
        say`The weighed charge is uncertain by ${quantity('mass', COVERAGE * u)}; it must be right within ${tolerance}`,
        undefined,
        inSoFar,
      ),
    ],
    steps: isAssumed ? [DESCRIBE_SCALE, FINER_SCALE] : [FINER_SCALE],
    next: [],
  }
}

const FINER_SCALE = say`Recover, and weigh in again on a finer scale`
const DESCRIBE_SCALE = say`A plain scale was assumed: describe yours among the instruments and correct the entry; only if it is coarser than that`

function weighIn(
  { visit, refrigerant }: Case,
  mass: Mass,
  tolerance: Mass,
  reason: Evidence,
  resolve: Evidence,
): Finding {
  const { meteringDevice } = visit.system.facts
  const dose: Dose = {
    direction: 'into-system',
    mass,
    phase: 'liquid',
    port: 'liquid-line',
    compressor: 'stopped',
    evidence: reason,
  }
  const procedure = weighInProcedure({
    charge: mass,
    tolerance,
    refrigerant,
    ...(meteringDevice ? { meteringDevice } : {}),
  })
  return {
    kind: 'add',
    sentence: say`Weigh in ${mass}, as liquid, into the high side of the stopped system`,
    reasons: [reason, resolve],
    // The system is empty: that is the condition under which this is said.
    steps: [...procedure.filter(({ id }) => id !== 'empty').map(inOneSentence)],
    dose,
    next: [],
  }
}

function inOneSentence(step: ProcedureStep): Step {
  const sentence = oneSentence(step)
  if (step.id === 'equalise') return equalising(sentence)
  return step.id === 'settle' ? settling(sentence) : sentence
}

function oneSentence({ act, wait, goOnWhen, stops }: ProcedureStep): Statement {
  const timed = wait ? say`${act} (${wait})` : act
  const seen = goOnWhen ? say`${timed}, until “${goOnWhen}”` : timed
  const [stop] = stops
  if (!stop) return seen
  return stop.after
    ? say`${seen}. If after ${stop.after} “${stop.seen}”: ${stop.instead}`
    : say`${seen}. If “${stop.seen}”: ${stop.instead}`
}

function takeOut(mass: Mass, reason: Evidence, resolve: Evidence): Finding {
  const dose: Dose = {
    direction: 'out-of-system',
    mass,
    phase: 'liquid',
    port: 'liquid-line',
    compressor: 'stopped',
    evidence: reason,
  }
  return {
    kind: 'recover',
    sentence: say`Recover ${mass} into a recovery cylinder`,
    reasons: [reason, resolve],
    steps: [say`Weigh the cylinder before and after; where the charge is critical, recover all and weigh in again`],
    dose,
    next: [],
  }
}
