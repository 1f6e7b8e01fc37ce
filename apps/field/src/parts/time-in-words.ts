const FORMAT = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' })

/** A timestamp as this device reads its clock; one that is no time is shown as it stands. */
export function timeInWords(at: string): string {
  const time = new Date(at)
  return Number.isNaN(time.valueOf()) ? at : FORMAT.format(time)
}
