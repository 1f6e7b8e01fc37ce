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
import { secondUnit } from './implied-unit.ts'

/** What a typed text means, and the text to keep: a bare number gets the unit that stood beside the field. */
export interface Understood {
  readonly quantity: Quantity
  readonly text: string
}

/**
 * Reads a typed quantity; a bare number is taken in the unit shown beside the field, a second one in the unit that goes
 * on from the first (`14 lb 6`).
 */
export function understand(
  typed: string,
  field: { readonly label: string; readonly accepts: readonly Dimension[] },
  units: UnitPreference,
): Result<Understood, Problem> {
  const text = typed.trim()
  const asTyped = parse(text, field.accepts, { field: field.label })
  if (asTyped.ok) return ok({ quantity: asTyped.value, text })
  const [dimension] = field.accepts as readonly [Dimension]
  const second = secondUnit(text, dimension)
  const unit = second ?? preferredUnit(dimension, units)
  const whole = `${text} ${unit.symbol}`
  const read = second
    ? parse(whole, field.accepts, { field: field.label })
    : parse(text, field.accepts, { field: field.label, assume: unit })
  return read.ok ? ok({ quantity: read.value, text: whole }) : fail(read.error)
}
