import type { Channel } from '@chargewright/charging'
import { fromSi, type Quantity, toSi, type Unit, unitsOf } from '@chargewright/quantity'
import { type ReadingId, readingKind } from '@chargewright/visit'

/** What instruments measured over time, before it is said what the columns mean. */
export interface Recording {
  /** Name of the file, or of the way it came. */
  readonly name: string
  readonly columns: readonly Column[]
}

export interface Column {
  readonly header: string
  /** Name of the instrument, kept with every reading that is taken from it. */
  readonly instrument: string
  /** Numbers as written, in time; seconds from the zero of the recording. */
  readonly samples: readonly { readonly time_s: number; readonly number: number }[]
}

/** What a column is, as said by hand; nothing where it is not used. */
export interface Meaning {
  readonly what: ReadingId
  /** Symbol of the unit in which its numbers are. */
  readonly unit: string
}

/** Every unit in which a reading may be written. */
export const unitsFor = (what: ReadingId): readonly Unit[] =>
  readingKind(what).accepts.flatMap((dimension) => unitsOf(dimension))

/** A column as a channel in SI. */
export function channelOf({ samples }: Column, { what, unit: symbol }: Meaning): Channel {
  const unit = unitsFor(what).find((each) => each.symbol === symbol) ?? unitsFor(what)[0]!
  const inSi = samples.map(({ time_s, number }) => ({ time_s, si: toSi(number, unit) }))
  return { what, dimension: unit.dimension, samples: inSi }
}

/** The text to keep for a value taken from a column: in the unit of the column, with a digit more than is shown. */
export function typedValue({ si }: Quantity, what: ReadingId, symbol: string): string {
  const unit = unitsFor(what).find((each) => each.symbol === symbol) ?? unitsFor(what)[0]!
  return `${fromSi(si, unit).toFixed(unit.decimals + 1)} ${unit.symbol}`
}
