import { outOfRange, type Problem, type Quantity, quantity } from '@chargewright/quantity'

/** How a shut-off vacuum must hold: pulled to `start` or below, and not above `limit` for as long as `hold`. */
export interface HoldCriterion {
  readonly start: Quantity<'absolute pressure'>
  readonly limit: Quantity<'absolute pressure'>
  readonly hold: Quantity<'duration'>
  readonly source: string
}

const MICRON = 101_325 / 760_000
const criterion = (start: number, limit: number, minutes: number, source: string): HoldCriterion => ({
  start: quantity('absolute pressure', start * MICRON),
  limit: quantity('absolute pressure', limit * MICRON),
  hold: quantity('duration', minutes * 60),
  source,
})

/** The criteria on file; what the maker of the system prints goes before both. */
export const HOLD_CRITERIA = {
  /** READ: pull to 300 micron, shut off for an hour, at most 500 micron, else again. Ambient above 35 °F. */
  specification: criterion(300, 500, 60, 'UFGS 15182 (US government construction specification)'),
  /** REMEMBERED: 250 micron is the level asked for with polyolester oil, which takes up water and gives it back slowly. */
  habit: criterion(250, 500, 10, '250 micron, at most 500 after 10 minutes: common practice'),
} as const

/** The problem with a criterion that was typed: start 0.1 Pa to 10 kPa, limit from there up, hold 10 s to 7 days. */
export function badCriterion({ start, limit, hold }: HoldCriterion): Problem | undefined {
  return (
    outOfRange('pressure to start the hold from', start.si, 0.1, MAX_PA, 'Pa') ??
    outOfRange('pressure not to rise above', limit.si, start.si, MAX_PA, 'Pa') ??
    outOfRange('time to hold', hold.si, 10, 7 * 86_400, 's')
  )
}

const MAX_PA = 10_000
