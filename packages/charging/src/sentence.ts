import { type Evidence, type Statement, say } from '@chargewright/quantity'
import type { Dose, Finding, LookAlike, Step } from './assessment.ts'
import { LIMITS } from './limit.ts'
import type { Case } from './ruling.ts'
import { equalising, settling } from './timed.ts'

/** The charge is right as far as the method can tell; what closes the work, where it is not the caps of its ports. */
export function hold(reason: Evidence, more: readonly Evidence[] = [], closing: readonly Step[] = [CAP]): Finding {
  return {
    kind: 'hold',
    sentence: say`Leave the charge as it is`,
    reasons: [reason, ...more],
    steps: closing,
    next: [],
  }
}

export const CAP = say`Cap the ports, check them for leaks and sign the record`

const PORTS: Readonly<Record<Dose['port'], string>> = {
  suction: 'the suction service port',
  'liquid-line': 'the liquid-line port',
  receiver: 'the receiver',
}

/** Add or recover one weighed step, then wait and read again. */
export function charge(asked: Case, deviation: Evidence, lookAlikes: readonly LookAlike[], dose: Dose): Finding {
  const reasons = [deviation, ...lookAlikes.map(({ evidence }) => evidence), dose.evidence]
  const again = settling(say`Let it run ${LIMITS.settleTime.quantity}, then read everything again`)
  if (dose.direction === 'out-of-system') {
    return {
      kind: 'recover',
      sentence: say`Recover ${dose.mass} into a recovery cylinder, from ${PORTS[dose.port]}`,
      reasons,
      steps: [say`Weigh the cylinder before and after`, again],
      dose,
      next: [],
    }
  }
  return { kind: 'add', sentence: addition(dose), reasons, steps: [...howToAdd(asked, dose), again], dose, next: [] }
}

function addition(dose: Dose): Statement {
  if (dose.until === 'glass-clears')
    return say`Add up to ${dose.mass}, as vapour, at ${PORTS[dose.port]}, until the glass clears`
  return dose.compressor === 'running'
    ? say`Add ${dose.mass}, as vapour, at ${PORTS[dose.port]}`
    : say`Add ${dose.mass}, as liquid, into ${PORTS[dose.port]} of the stopped system`
}

function howToAdd({ refrigerant }: Case, dose: Dose): readonly Step[] {
  if (dose.compressor === 'stopped') {
    return [
      say`Weigh it in with the compressor off`,
      say`If it does not flow, the cylinder is no warmer than the receiver: close the receiver outlet, start, and let the liquid line draw it in ahead of the valve, where the maker allows it; then open the outlet again`,
      equalising(say`Wait ${LIMITS.equaliseTime.quantity} for the pressures to equalise, then start`),
    ]
  }
  return [
    refrigerant.kind === 'blend'
      ? say`${refrigerant.name} is a blend: take liquid from the cylinder and throttle it to vapour before the port, weighing as it goes`
      : say`Take vapour from the cylinder, weighing as it goes`,
    ...(dose.until === 'glass-clears'
      ? [
          say`Keep the load high and watch the glass: close the cylinder when the bubbles are gone, and weigh what went in`,
        ]
      : []),
  ]
}
