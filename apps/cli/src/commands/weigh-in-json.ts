import type { MeasuredOut, ProcedureStep, VisitWeighIn } from '@chargewright/charging'
import { render, type UnitPreference } from '@chargewright/quantity'
import { evidenceJson } from '../evidence-json.ts'
import { problemJson } from '../problem-json.ts'
import { cautionJson, inSi, optional } from '../quantity-json.ts'

/** The charge with its parts, what is still to go in, and the sequence. */
export function weighInJson(answer: VisitWeighIn, units: UnitPreference): object {
  const { charge, toGoIn, measured, procedure, assessment, stillCharged } = answer
  const text = (statement: Parameters<typeof render>[0]) => render(statement, units)
  const step = ({ id, act, wait, goOnWhen, stops, source }: ProcedureStep) => ({
    id,
    act: text(act),
    ...(wait ? inSi('wait', wait) : {}),
    ...optional('go_on_when', goOnWhen && text(goOnWhen)),
    ...optional(
      'stops',
      stops.length === 0
        ? undefined
        : stops.map(({ seen, after, means, instead }) => ({
            seen: text(seen),
            ...(after ? inSi('after', after) : {}),
            means: text(means),
            instead: text(instead),
          })),
    ),
    source,
  })
  return {
    ...inSi('charge', charge.quantity),
    ...inSi('tolerance', charge.tolerance.quantity),
    ...(toGoIn ? inSi('to_go_in', toGoIn) : {}),
    ...optional('weighing', measured && weighingJson(measured, units)),
    still_charged: stillCharged,
    sentence: text(assessment.finding.sentence),
    evidence: evidenceJson(charge.evidence, units),
    procedure: procedure.map(step),
    problems: assessment.problems.map(({ eventId, problem }) => ({ event: eventId, ...problemJson(problem) })),
    cautions: assessment.cautions.map((each) => cautionJson(each, units)),
  }
}

/** What scale, hose and charging cylinder make of the charge. */
function weighingJson({ byScale, inHose, fall, graduation }: MeasuredOut, units: UnitPreference): object {
  const parts = [byScale, inHose, fall, graduation].filter((part) => part !== undefined)
  return {
    ...inSi('by_scale', byScale.quantity),
    ...(inHose ? inSi('in_hose', inHose.quantity) : {}),
    ...(fall ? inSi('cylinder_fall', fall.quantity) : {}),
    ...(graduation ? inSi('graduation_fall', graduation.quantity) : {}),
    reasons: parts.map(({ evidence }) => evidenceJson(evidence, units)),
  }
}
