import * as v from 'valibot'
import { type Instrument, InstrumentSchema } from './event.ts'

/** An instrument as it was kept apart from any visit, or undefined if this is none. */
export function readInstrument(kept: unknown): Instrument | undefined {
  const read = v.safeParse(InstrumentSchema, kept)
  return read.success ? read.output : undefined
}
