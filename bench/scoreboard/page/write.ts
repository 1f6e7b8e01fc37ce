import type { Quantile } from '../metrics/quantile.ts'
import type { Share } from '../metrics/share.ts'

/** A share as a reader wants it: per cent, with its interval. */
export const written = (share: Share): string =>
  share.of === 0 ? '–' : `${percent(share.share)} (${percent(share.low)} to ${percent(share.high)})`

export const writtenQuantile = (q: Quantile | undefined): string =>
  q ? `${percent(q.value)} (${percent(q.low)} to ${percent(q.high)})` : '–'

/** Two digits are all that a thousand cases can give; below one per cent one more. */
export function percent(share: number): string {
  if (Number.isNaN(share)) return '–'
  const value = 100 * share
  return value >= 9.95 ? value.toFixed(0) : value.toFixed(1)
}

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`
  return [line(head), line(head.map((_, i) => (i === 0 ? '---' : '--:'))), ...rows.map(line)].join('\n')
}
