import { ok, type Problem, type Result } from '@chargewright/quantity'
import type { Mass } from '../cylinder/cylinder.ts'
import { monthsLater, readDay } from './calendar.ts'

interface Change {
  readonly on: string
  readonly mass: Mass
}

/**
 * Whether an addition only puts back what a change of season had taken out: no more than was removed in the season
 * before, both within twelve months. One that exceeds it by a gram does not qualify at all.
 *
 * @source 40 CFR 82.152, seasonal variance
 */
export function isSeasonalVariance(removed: Change, added: Change): Result<boolean, Problem> {
  const out = readDay(removed.on, 'removed.on')
  if (!out.ok) return out
  const back = readDay(added.on, 'added.on')
  if (!back.ok) return back
  const inTime = back.value >= out.value && back.value <= monthsLater(out.value, 12)
  return ok(inTime && added.mass.si <= removed.mass.si)
}
