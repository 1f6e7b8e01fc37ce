import { say, type Tell } from '@chargewright/quantity'

/** `2026-06-23` of a time as the device told it. */
export const dayOf = (at: string): string => at.slice(0, 10)

/** `09:24`, with the offset where the device told one: the zone is the record's own and never the printer's. */
export function clockOf(at: string): string {
  const offset = /[+-]\d\d(:?\d\d)?$/.exec(at.slice(10))?.[0]
  return at.slice(11, 16) + (offset ? ` ${offset.replace('-', '−')}` : '')
}

/** `2026-06-23 09:24`. */
export const timeOf = (at: string): string => `${dayOf(at)} ${clockOf(at)}`

/** How to read the times of a record. */
export function zoneOf(times: readonly string[], tell: Tell): string {
  if (times.length === 0) return ''
  return tell(
    times.every((at) => at.endsWith('Z'))
      ? say`Times are UTC, as the device told them.`
      : say`Times are as the device told them.`,
  )
}
