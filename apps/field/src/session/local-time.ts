/** An instant as the clock of this device tells it, with its zone: `2026-06-23T09:24:05.123-05:00`; in UTC with `Z`. */
export function localTime(instant: Date): string {
  const offset = -instant.getTimezoneOffset()
  const local = new Date(instant.getTime() + offset * MINUTE_MS).toISOString().slice(0, -1)
  if (offset === 0) return `${local}Z`
  const [hours, minutes] = [Math.floor(Math.abs(offset) / 60), Math.abs(offset) % 60].map((part) =>
    String(part).padStart(2, '0'),
  )
  return `${local}${offset < 0 ? '-' : '+'}${hours}:${minutes}`
}

const MINUTE_MS = 60_000

/** Milliseconds since 1970 of a time with any zone, so that times can be put in order; 0 of one that is none. */
export const instantOf = (at: string): number => Date.parse(at) || 0
