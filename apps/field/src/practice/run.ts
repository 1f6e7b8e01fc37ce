import type { BenchRequest } from '@chargewright/cycle'
import type { MeteringDevice, VisitEvent } from '@chargewright/visit'

/**
 * A run on the practice bench: the case that its seed draws, what was asked of it in order, and the visit that was kept
 * of it. The state of the bench is computed from these, again and again.
 */
export interface Run {
  readonly id: string
  readonly seed: number
  readonly device: MeteringDevice
  /** By the clock of this device. */
  readonly startedAt: string
  readonly requests: readonly BenchRequest[]
  readonly events: readonly VisitEvent[]
}

/** Seconds that have passed on the bench: as many as were waited. */
export const clockOf = ({ requests }: Pick<Run, 'requests'>): number =>
  requests.reduce((sum, request) => sum + (request.kind === 'wait' ? request.duration_s : 0), 0)

/** The time on the bench: its start, and the time waited since. */
export const timeOf = (run: Run): string => new Date(Date.parse(run.startedAt) + clockOf(run) * 1000).toISOString()

export const isOver = ({ requests }: Pick<Run, 'requests'>): boolean => requests.some(({ kind }) => kind === 'debrief')

/** `1:05` on the bench, hours and minutes. */
export function benchClock(seconds: number): string {
  const minutes = Math.floor(seconds / 60)
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
}
