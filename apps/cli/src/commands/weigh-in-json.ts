import type { ProcedureStep } from '@chargewright/charging'
import { render, type UnitPreference } from '@chargewright/quantity'
import { evidenceJson } from '../evidence-json.ts'
import { problemJson } from '../problem-json.ts'
import { cautionJson, inSi, optional } from '../quantity-json.ts'
import type { WeighInAnswer } from './weigh-in.ts'

/** The charge with its parts, what is still to go in, and the sequence. */
export function weighInJson(answer: WeighInAnswer, units: UnitPreference): object {
  const { charge, toGoIn, procedure, assessment, stillCharged } = answer
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
    still_charged: stillCharged,
    sentence: text(assessment.finding.sentence),
    evidence: evidenceJson(charge.evidence, units),
    procedure: procedure.map(step),
    problems: assessment.problems.map(({ eventId, problem }) => ({ event: eventId, ...problemJson(problem) })),
    cautions: assessment.cautions.map((each) => cautionJson(each, units)),
  }
}
