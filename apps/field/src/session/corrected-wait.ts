import { parse } from '@chargewright/quantity'
import type { FactOf } from '@chargewright/visit'

type Wait = FactOf<'wait'>

/** A wait in the place of another one: where that had only begun, it goes on, and ends so much earlier or later. */
export function correctedWait(was: Wait, is: Wait): Wait {
  if (was.ends === undefined) return is
  const [before, after] = [parse(was.duration, 'duration'), parse(is.duration, 'duration')]
  if (!before.ok || !after.ok) return { ...is, ends: was.ends }
  const ends = Date.parse(was.ends) + 1000 * (after.value.si - before.value.si)
  return { ...is, ends: new Date(ends).toISOString() }
}
