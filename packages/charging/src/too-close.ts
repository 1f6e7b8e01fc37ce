import { type Evidence, type Quantity, say } from '@chargewright/quantity'
import type { ReadingId } from '@chargewright/visit'
import type { Finding, NextEntry } from './assessment.ts'
import { entryLabel } from './entry-label.ts'

/** Source of every *too close to tell*. */
export const GUARD = 'guard of one standard uncertainty (JCGM 106:2012)'

/** *Cannot tell*: an edge of the band lies within the uncertainty, and `next` is the reading that would narrow it most. */
export function tooClose(measure: string, reason: Evidence, next: NextEntry): Finding {
  return {
    kind: 'cannot-tell',
    sentence: say`${measure} is too close to the edge of its band for these instruments`,
    reasons: [reason],
    steps: [say`Read again with a better instrument: ${entryLabel(next.entry)} ${next.why}`],
    next: [next],
  }
}

/** The reading with the largest share in an uncertainty. */
export function widest(shares: readonly (readonly [reading: ReadingId, quantity: Quantity | undefined])[]): NextEntry {
  const u = (quantity: Quantity | undefined) => quantity?.u ?? 0
  const [what] = shares.reduce((a, b) => (u(b[1]) > u(a[1]) ? b : a))
  return {
    entry: { kind: 'reading', what },
    why: say`has the largest share in the uncertainty`,
  }
}
