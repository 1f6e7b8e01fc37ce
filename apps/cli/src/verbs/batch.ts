import { fail, ok, type Problem, type Result, type UnitPreference } from '@chargewright/quantity'
import type { BatchVerb } from '../batch/answer-line.ts'
import { type FieldsOf, type FieldTypes, readFields } from '../batch/fields.ts'
import { assessObject } from '../commands/assess.ts'
import { assessJson } from '../commands/assess-json.ts'
import { LEAK_FIELDS, leak } from '../commands/leak.ts'
import { listed } from '../commands/list.ts'
import { SATURATION_FIELDS, saturation } from '../commands/saturation.ts'
import { STATE_FIELDS, state } from '../commands/state.ts'
import { missing } from '../failure.ts'

export const saturationBatch = withFields(SATURATION_FIELDS, saturation)

export const stateBatch = withFields(STATE_FIELDS, state)

export const leakBatch = withFields(LEAK_FIELDS, leak)

export const listBatch = withFields({ refrigerant: 'text' }, ({ refrigerant }) =>
  refrigerant === undefined ? fail(missing('refrigerant', 'a refrigerant, such as R-410A')) : listed(refrigerant),
)

/** A visit file a line; sentences in the units preferred. */
export const assessBatch =
  (units: UnitPreference): BatchVerb =>
  (input) => {
    const answer = assessObject(input)
    return answer.ok ? ok(assessJson(answer.value, units)) : answer
  }

/** A verb that asks one question of a few named fields. */
function withFields<Types extends FieldTypes>(
  types: Types,
  ask: (fields: FieldsOf<Types>) => Result<object, Problem>,
): BatchVerb {
  return (input) => {
    const fields = readFields(input, types)
    if (!fields.ok) return fields
    const answer = ask(fields.value)
    return answer.ok ? answer : fail([answer.error])
  }
}
