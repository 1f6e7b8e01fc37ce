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
const written = (parts: Parts) => new Intl.DateTimeFormat(t('en-GB'), parts)
