import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import type { BookBalance } from '../cylinder/balance-book.ts'
import type { Mass } from '../cylinder/cylinder.ts'
import type { Step } from '../cylinder/cylinder-account.ts'
import { type Day, readDay } from './calendar.ts'

/** Refrigerant added to an appliance on one day. */
export interface Addition {
  /** ISO date or timestamp, of the place where the appliance stands. */
  readonly on: string
  readonly mass: Mass
  /** Why no leak rate is due for it. It still is the last day on which refrigerant was added. */
  readonly exempt?: 'retrofit' | 'installation' | 'seasonal-variance'
  /** A name for the leak: additions that share it are taken together by the annualizing method. */
  readonly leak?: string
}

export type DatedAddition = Addition & { readonly day: Day }

/** The additions with their days, the earliest first. */
export function datedAdditions(additions: readonly Addition[]): Result<readonly DatedAddition[], Problem> {
  const dated: DatedAddition[] = []
  for (const [i, addition] of additions.entries()) {
    const day = readDay(addition.on, `additions[${i}].on`)
    if (!day.ok) return day
    const problem = outOfRange(`additions[${i}].mass`, addition.mass.si, 0, Number.MAX_VALUE, 'kg')
    if (problem) return fail(problem)
    dated.push({ ...addition, day: day.value })
  }
  return ok(dated.sort((a, b) => a.day - b.day))
}

/**
 * What the cylinder book gave to a system, visit by visit (day by day where no visit is named), as additions. What was
 * recovered in the same visit is taken off: it went back where it came from and leaked nowhere. A job that recovers in
 * one visit and charges in another counts in full, which errs on the side of the law.
 */
export function additionsToSystem({ steps }: BookBalance, system: string): readonly Addition[] {
  const visits = new Map<string, Step[]>()
  for (const step of steps) {
    const { counterpart, visit, at } = step.movement
    if (counterpart.kind !== 'system' || counterpart.system !== system) continue
    const key = JSON.stringify(visit === undefined ? ['day', at.slice(0, 10)] : ['visit', visit])
    visits.set(key, [...(visits.get(key) ?? []), step])
  }
  return [...visits.values()].map(netAddition).filter(({ mass }) => mass.si > 0)
}

function netAddition(steps: readonly Step[]): Addition {
  const si = steps.reduce(
    (sum, { movement, moved }) => sum + (movement.direction === 'from-cylinder' ? moved.si : -moved.si),
    0,
  )
  const u = Math.hypot(...steps.map(({ moved }) => moved.u ?? 0))
  return { on: steps.at(-1)!.movement.at, mass: { dimension: 'mass', si, u } }
}
