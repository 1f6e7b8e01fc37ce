const FORMAT = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' })

const DAY = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
})

const HOUR = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' })

/** The hour and minute of a moment, in milliseconds since 1970, as this device reads its clock. */
export const hourInWords = (moment: number): string => HOUR.format(moment)

/** A timestamp as this device reads its clock; one that is no time is shown as it stands. */
export const timeInWords = (at: string): string => written(at, FORMAT)

/** The same with its year, for what is looked up long after. */
export const dayInWords = (at: string): string => written(at, DAY)

function written(at: string, format: Intl.DateTimeFormat): string {
  const time = new Date(at)
  return Number.isNaN(time.valueOf()) ? at : format.format(time)
}
