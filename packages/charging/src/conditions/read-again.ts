import { say } from '@chargewright/quantity'
import type { ReadingId, Visit } from '@chargewright/visit'
import type { NextEntry } from '../assessment.ts'

export const AGAIN = say`to be read again when that is done`

/** The readings on which a condition hung, to be taken again once something was done about it: those that were taken. */
export function readAgain({ readings }: Visit, ids: readonly ReadingId[]): readonly NextEntry[] {
  return ids.filter((id) => readings[id]).map((what) => ({ entry: { kind: 'reading', what }, why: AGAIN }))
}
