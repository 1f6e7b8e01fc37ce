import {
  type Evidence,
  inEnglish,
  type Quantity,
  type Statement,
  sourceInWords,
  teller,
  type UnitPreference,
  type Words,
} from '@chargewright/quantity'
import { inSi, optional } from './quantity-json.ts'

/** An evidence as JSON: its sentence, the quantities in it, its source, the event at a leaf, and what it rests on. */
export function evidenceJson(evidence: Evidence, units: UnitPreference, words: Words = inEnglish): object {
  const { source } = evidence
  return {
    text: teller(units, words)(evidence.statement),
    ...values(evidence.statement),
    ...optional('source', source && sourceInWords(source, words)),
    ...optional('event', evidence.eventId),
    ...(evidence.from.length === 0 ? {} : { from: evidence.from.map((part) => evidenceJson(part, units, words)) }),
  }
}

/** The quantities in a sentence, in their order, those of sentences inside it included. */
function values(statement: Statement): object {
  const found = quantitiesOf(statement).map((q) => ({
    quantity: q.dimension,
    ...inSi('value', q, 'standard_uncertainty'),
  }))
  return found.length === 0 ? {} : { values: found }
}

function quantitiesOf(statement: Statement): readonly Quantity[] {
  return statement.values.flatMap((value) => {
    if (typeof value !== 'object' || 'verbatim' in value) return []
    return 'template' in value ? quantitiesOf(value) : [value]
  })
}
