import { say } from '@chargewright/quantity'
import type { Finding, LookAlike } from '../assessment.ts'
import type { Evidence } from '../evidence.ts'

/**
 * Nothing is added or recovered while another cause explains the readings as well: one that explains them is the
 * finding, one that is still open makes it *cannot tell*. Undefined when the charge alone is left.
 */
export function otherCause(deviation: Evidence, lookAlikes: readonly LookAlike[]): Finding | undefined {
  const cause = lookAlikes.find(({ verdict }) => verdict === 'explains')
  if (cause) {
    return {
      kind: 'not-the-charge',
      sentence: say`Leave the charge alone: ${cause.label}`,
      reasons: [deviation, cause.evidence],
      steps: [REPAIR[cause.id], say`Then let the system settle and read everything again`],
      cause,
      next: [],
    }
  }
  const open = lookAlikes.filter(({ verdict }) => verdict === 'open')
  if (!open[0]) return undefined
  return {
    kind: 'cannot-tell',
    sentence: say`The charge or ${open[0].label}: these readings fit both`,
    reasons: [deviation, ...open.map(({ evidence }) => evidence)],
    steps: open.flatMap(({ next }) => next?.why ?? []),
    next: open.flatMap(({ next }) => next ?? []),
  }
}

const REPAIR: Readonly<Record<LookAlike['id'], ReturnType<typeof say>>> = {
  'low-indoor-airflow': say`Put the indoor airflow right`,
  'liquid-line-restriction': say`Find the restriction: feel or measure along the liquid line for the place where it turns colder; change the drier if it is there`,
  'gas-or-poor-condenser-air': say`Clean the condenser coil and check its fan; with the system at rest compare its pressure with saturation at the ambient temperature to find gas`,
  'weak-compressor-or-oversized-orifice': say`Check the orifice against the nameplate; compare compressor current and pressures with the maker's curves`,
  'valve-feeds-too-little': say`Check the valve: bulb charge, strainer, adjustment, pressure drop ahead of it`,
  'valve-feeds-too-much': say`Check the valve: bulb fixed, insulated and in its place, adjustment, seat`,
  leak: say`Recover what is left and weigh it, find and repair the leak, leak check, evacuate, weigh in`,
}
