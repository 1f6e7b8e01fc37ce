import { t } from '../words/t.ts'

const MOMENT = { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' } as const
const DAY = { ...MOMENT, year: 'numeric' } as const
const HOUR = { hour: '2-digit', minute: '2-digit' } as const

/** The hour and minute of a moment, in milliseconds since 1970, as this device reads its clock. */
export const hourInWords = (moment: number): string => written(HOUR).format(moment)

/** A timestamp as this device reads its clock; one that is no time is shown as it stands. */
export const timeInWords = (at: string): string => ofTimestamp(at, MOMENT)

/** The same with its year, for what is looked up long after. */
export const dayInWords = (at: string): string => ofTimestamp(at, DAY)

function ofTimestamp(at: string, parts: Parts): string {
  const time = new Date(at)
  return Number.isNaN(time.valueOf()) ? at : written(parts).format(time)
}

type Parts = typeof MOMENT | typeof DAY | typeof HOUR

/** Both languages with the day before the month and 24 hours; the catalogue names its locale like any other text. */
function written(parts: Parts): Intl.DateTimeFormat {
  const locale = t('en-GB')
  const known = made.get(parts)
  if (known?.locale === locale) return known.format
  const format = new Intl.DateTimeFormat(locale, parts)
  made.set(parts, { locale, format })
  return format
}

/** Kept, because a log asks once for each of its lines and the making of one takes a millisecond on a phone. */
const made = new Map<Parts, { readonly locale: string; readonly format: Intl.DateTimeFormat }>()
