import { type Evidence, type Quantity, say } from '@chargewright/quantity'
import type { ReadingId } from '@chargewright/visit'
import type { Finding, NextEntry } from './assessment.ts'
import { entryLabel } from './entry-label.ts'
import { LIMITS } from './limit.ts'
import { settling } from './timed.ts'

/** Source of every *too close to tell*. */
export const GUARD = 'guard of one standard uncertainty (JCGM 106:2012)'

/**
 * *Cannot tell*: an edge of the band lies within the uncertainty, and `next` is the reading that would narrow it most.
 * A better instrument is not always at hand; to read it again when it is steady, and else to move nothing, always is.
 *
 * @source *common practice*
 */
export function tooClose(measure: string, reason: Evidence, next: NextEntry): Finding {
  return {
    kind: 'cannot-tell',
    sentence: say`${measure} is too close to the edge of its band for these instruments`,
    reasons: [reason],
    steps: [
      settling(
        say`Let it run ${LIMITS.settleTime.quantity} and read everything again: once it is steady it may lie clear of the edge`,
      ),
      say`Where a better instrument is at hand, read with it: ${entryLabel(next.entry)} ${next.why}`,
      say`If it stays at the edge, leave the charge as it is and note so: these readings do not tell that it is wrong`,
    ],
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
