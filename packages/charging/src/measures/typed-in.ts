import { type Evidence, say } from '@chargewright/quantity'
import { type Reading, readingKind } from '@chargewright/visit'

/** The leaf of every tree: the reading as it was typed. */
export function typedIn(reading: Reading): Evidence {
  const { label } = readingKind(reading.what)
  return {
    statement: say`${label} ${reading.quantity}, typed “${reading.typed}”`,
    source: reading.uncertaintySource,
    eventId: reading.eventId,
    from: [],
  }
}
