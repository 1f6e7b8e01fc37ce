import { say, type Tell, verbatim } from '@chargewright/quantity'

/** `2026-06-23` of a time as the device told it. */
export const dayOf = (at: string): string => at.slice(0, 10)

/** `09:24`; with its offset where that is not the one of the whole record. The zone is never the printer's. */
export function clockOf(at: string, common: string | undefined): string {
  const own = offsetOf(at)
  return own === common ? at.slice(11, 16) : `${at.slice(11, 16)} ${offsetInWords(own)}`
}

/** `2026-06-23 09:24`. */
export const timeOf = (at: string, common: string | undefined): string => `${dayOf(at)} ${clockOf(at, common)}`

/** `-05:00`, `Z` for UTC, where all of these times were told with it; else nothing. */
export function commonOffset(times: readonly string[]): string | undefined {
  const [first, ...others] = new Set(times.map(offsetOf))
  return others.length === 0 ? first : undefined
}

/** How to read the times of a record. */
export function zoneOf(times: readonly string[], tell: Tell): string {
  if (times.length === 0) return ''
  const common = commonOffset(times)
  if (common === undefined) return tell(say`Times are as the device told them, each with its zone.`)
  return tell(
    common === UTC
      ? say`Times are UTC, as the device told them.`
      : say`Times are local, ${verbatim(offsetInWords(common))}, as the device told them.`,
  )
}

const UTC = 'Z'

/** `-05:00`, however it is written. */
function offsetOf(at: string): string {
  const [, sign, hours = '00', minutes = '00'] = /([+-])(\d\d):?(\d\d)?$/.exec(at.slice(10)) ?? []
  return sign === undefined || `${hours}${minutes}` === '0000' ? UTC : `${sign}${hours}:${minutes}`
}

/** `UTC−05:00` */
const offsetInWords = (offset: string) => (offset === UTC ? 'UTC' : `UTC${offset.replace('-', '−')}`)
