import {
  type Dimension,
  findUnit,
  fromSi,
  INCH_POUND,
  ok,
  outOfRange,
  type Problem,
  preferredUnit,
  type Result,
  STANDARD_ATMOSPHERE,
  type Unit,
} from '@chargewright/quantity'
import type { FactOf } from './event.ts'
import { measured } from './measured.ts'
import { instrumentSort } from './plain-instrument.ts'
import { readingKind } from './reading-kind.ts'
import type { Origin, Reading } from './visit.ts'

/** A reading with its quantity and uncertainty, or the problem with what was typed. */
export function readReading(fact: FactOf<'reading'>, origin: Origin): Result<Reading, Problem> {
  const { accepts, instrument, label } = readingKind(fact.what)
  const { accuracy } = instrumentSort(instrument)
  const read = measured(fact.value, accepts, accuracy, fact.instrument, label)
  return read.ok ? ok({ ...origin, what: fact.what, typed: fact.value, ...read.value }) : read
}

/** The doubt about a reading outside what is plausible for its kind, in the unit in which it was typed. */
export function doubtReading({
  what,
  typed,
  quantity,
}: Pick<Reading, 'what' | 'typed' | 'quantity'>): Problem | undefined {
  const { label, plausible } = readingKind(what)
  // A standard atmosphere is good enough here: the question is whether a digit slipped.
  const zero = quantity.dimension === 'gauge pressure' ? STANDARD_ATMOSPHERE.si : 0
  const unit = typedUnit(typed, quantity.dimension)
  // A unit that counts downwards (vacuum) turns the limits round.
  const [min, max] = plausible.map((si) => fromSi(si - zero, unit)).sort((a, b) => a - b) as [number, number]
  const shown = (value: number) => Number(value.toPrecision(6))
  return outOfRange(label, shown(fromSi(quantity.si, unit)), shown(min), shown(max), unit.symbol)
}

function typedUnit(typed: string, dimension: Dimension): Unit {
  const spelling = /[^\d\s.,'’+−–/-].*$/.exec(typed)?.[0] ?? ''
  return findUnit(spelling.trim(), dimension) ?? preferredUnit(dimension, INCH_POUND)
}
