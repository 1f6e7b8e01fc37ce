import type { Assessment } from '@chargewright/charging'
import type { Evidence, Measure } from '@chargewright/quantity'
import { READING_IDS, type ReadingId, type Visit } from '@chargewright/visit'

/**
 * The derived values, each beside the last reading (in walking order) that it rests on: there it becomes known. What
 * rests on no reading is left out; it stands in the reasons. So is a measure that is itself what was typed.
 */
export function besideReadings(
  measures: Assessment['measures'],
  readings: Visit['readings'],
): Readonly<Partial<Record<ReadingId, readonly Evidence[]>>> {
  const places = new Map(READING_IDS.map((id) => [readings[id]?.eventId, id]))
  const beside: Partial<Record<ReadingId, Evidence[]>> = {}
  for (const measure of Object.values(measures)) {
    const { evidence } = measure as Measure
    if (evidence.eventId !== undefined) continue
    const used = new Set(leaves(evidence).map((eventId) => places.get(eventId)))
    const last = READING_IDS.findLast((id) => used.has(id))
    if (last !== undefined) beside[last] = [...(beside[last] ?? []), evidence]
  }
  return beside
}

function leaves({ eventId, from }: Evidence): readonly string[] {
  const below = from.flatMap(leaves)
  return eventId === undefined ? below : [eventId, ...below]
}
