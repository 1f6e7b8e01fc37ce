import { type Evidence, type Statement, say } from '@chargewright/quantity'
import type { Finding, LookAlike } from '../assessment.ts'
import { CAUSE_WORDS } from '../diagnosis/cause-words.ts'
import { entryLabel } from '../entry-label.ts'

/**
 * Nothing is added or recovered while another cause explains the readings as well: one that explains them is the
 * finding, one that is still open makes it *cannot tell*. Undefined when the charge alone is left.
 */
export function otherCause(deviation: Evidence, lookAlikes: readonly LookAlike[]): Finding | undefined {
  const cause = lookAlikes.find(({ verdict }) => verdict === 'explains')
  if (cause) return leaveTheCharge(deviation, cause)
  const open = lookAlikes.filter(({ verdict }) => verdict === 'open')
  if (!open[0]) return undefined
  return {
    kind: 'cannot-tell',
    sentence: say`The charge or ${open[0].label}: these readings fit both`,
    reasons: [deviation, ...open.map(({ evidence }) => evidence)],
    steps: open.flatMap(({ next }) => (next ? say`${entryLabel(next.entry)}: ${next.why}` : [])),
    next: open.flatMap(({ next }) => next ?? []),
  }
}

/** The cause is something else; what to do about it, and what comes after. */
export function leaveTheCharge(deviation: Evidence, cause: LookAlike, mend = mending(cause.id)): Finding {
  return {
    kind: 'not-the-charge',
    sentence:
      cause.id === 'leak'
        ? say`Do not top up: the charge left through a leak`
        : say`Leave the charge alone: ${cause.label}`,
    reasons: deviation === cause.evidence ? [deviation] : [deviation, cause.evidence],
    steps: [mend, say`Then let the system settle and read everything again`],
    cause,
    next: [],
  }
}

function mending(id: LookAlike['id']): Statement {
  switch (id) {
    case 'gas-or-poor-condenser-air':
      return say`Clean the condenser coil and check its fan; then stop the system and compare its standing pressure with saturation at the ambient temperature to find non-condensables`
    case 'weak-compressor-or-oversized-orifice':
      return CAUSE_WORDS['weak-compressor'].mend
    case 'unanswered-step':
      return say`Stop adding and recovering; look for another fault: air over both coils, metering device, compressor, non-condensables in the circuit`
    case 'leak':
      return say`Recover what is left and weigh it, find and repair the leak, leak check, evacuate, weigh in`
    default:
      return CAUSE_WORDS[id].mend
  }
}
