import {
  type Dimension,
  fail,
  ok,
  type Problem,
  parse,
  preferredUnit,
  type Quantity,
  type Result,
  type UnitPreference,
} from '@chargewright/quantity'

/** What a typed text means, and the text to keep: a bare number gets the unit that stood beside the field. */
export interface Understood {
  readonly quantity: Quantity
  readonly text: string
}

/** Reads a typed quantity; a bare number is taken in the unit shown beside the field. */
export function understand(
  typed: string,
  field: { readonly label: string; readonly accepts: readonly Dimension[] },
  units: UnitPreference,
): Result<Understood, Problem> {
  const text = typed.trim()
  const asTyped = parse(text, field.accepts, { field: field.label })
  if (asTyped.ok) return ok({ quantity: asTyped.value, text })
  const unit = preferredUnit(field.accepts[0]!, units)
  const withUnit = parse(text, field.accepts, { field: field.label, assume: unit })
  if (!withUnit.ok) return fail(withUnit.error)
  return ok({ quantity: withUnit.value, text: `${text} ${unit.symbol}` })
}
