import { fail, ok, type Result } from '@chargewright/quantity'
import type { NotKept } from '../session/session.ts'
import { elapsedSince } from './elapsed-since.ts'

/** The time of a reading as it was typed; left empty, the time since the test began by the clock of this device. */
export function timeOfReading(typed: string | undefined, begun: string | undefined): Result<string, NotKept> {
  const after = typed ?? (begun === undefined ? undefined : elapsedSince(begun, Date.now()))
  if (after !== undefined) return ok(after)
  const accepted = 'how long after the beginning, because the clock of this device was set back: 5 min, 24 h'
  return fail({ kind: 'problems', problems: [{ kind: 'missing', field: AFTER_LABEL, value: 'nothing', accepted }] })
}

const AFTER_LABEL = 'How long after the beginning'

/** The blank for it. */
export const AFTER = {
  label: AFTER_LABEL,
  accepts: ['duration'],
  example: 'empty: now, by the clock of this device',
  optional: true,
} as const

/** The same where the reading was not taken just now. */
export const TYPED_AFTER = { ...AFTER, example: 'for example 12 min or 24 h', optional: false } as const
