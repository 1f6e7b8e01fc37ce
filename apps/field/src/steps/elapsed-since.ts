/** The time since an entry by the clock of this device, as one types it; undefined where the clock was set back. */
export function elapsedSince(at: string, now: number): string | undefined {
  const seconds = Math.round((now - Date.parse(at)) / 1000)
  if (!(seconds >= 0)) return undefined
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor((seconds % 3600) / 60), seconds % 60]
  const parts = [hours > 0 ? `${hours} h` : '', minutes > 0 ? `${minutes} min` : '', rest > 0 ? `${rest} s` : '']
  return parts.filter((part) => part !== '').join(' ') || '0 min'
}
