import { type Evidence, type Statement, say } from '@chargewright/quantity'
import type { Finding, LookAlike } from '../assessment.ts'
import type { Deviation } from '../deviation.ts'
import { nextDose } from '../dose.ts'
import { entryLabel } from '../entry-label.ts'
import type { Case } from '../ruling.ts'
import { charge } from '../sentence.ts'
import { settling } from '../timed.ts'

/** The finding behind a deviation: another cause if one explains it as well, else the next weighed step. */
export function judge(asked: Case, deviation: Deviation, lookAlikes: readonly LookAlike[]): Finding {
  const { evidence } = deviation
  return otherCause(evidence, lookAlikes) ?? charge(asked, evidence, lookAlikes, nextDose(asked, deviation))
}

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
export function leaveTheCharge(deviation: Evidence, cause: LookAlike): Finding {
  return {
    kind: 'not-the-charge',
    sentence: say`Leave the charge alone: ${cause.label}`,
    reasons: deviation === cause.evidence ? [deviation] : [deviation, cause.evidence],
    steps: [REPAIR[cause.id], settling(say`Then let the system settle and read everything again`)],
    cause,
    next: [],
  }
}

const REPAIR: Readonly<Record<LookAlike['id'], Statement>> = {
  'liquid-line-restriction': say`Find the restriction: feel or measure along the liquid line for the place where it turns colder; change the drier if it is there`,
  'gas-or-poor-condenser-air': say`Clean the condenser coil and check its fan; with the system at rest compare its pressure with saturation at the ambient temperature to find gas`,
  'weak-compressor-or-oversized-orifice': say`Check the orifice against the nameplate; compare compressor current and pressures with the maker's curves`,
  'valve-feeds-too-little': say`Check the valve: bulb charge, strainer, adjustment, pressure drop ahead of it`,
  'valve-feeds-too-much': say`Check the valve: bulb fixed, insulated and in its place, adjustment, seat`,
  'unanswered-step': say`Stop adding and recovering; look for another fault: air over both coils, metering device, compressor, gas in the circuit`,
  leak: say`Recover what is left and weigh it, find and repair the leak, leak check, evacuate, weigh in`,
}
