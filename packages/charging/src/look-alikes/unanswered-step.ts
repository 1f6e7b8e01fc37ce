import { say } from '@chargewright/quantity'
import type { LookAlike } from '../assessment.ts'
import { response, type Watched } from '../response.ts'
import type { Case } from '../ruling.ts'

/** More charge lowers the superheat and raises the subcooling: a system that answered the other way has another fault. */
const EXPECTED_SIGN: Readonly<Record<Watched, -1 | 1>> = { superheat: -1, subcooling: 1 }

/**
 * A weighed step is the best test there is: if the system answered it the wrong way, the charge is not what is wrong.
 * Nothing where no step lies behind or its answer was too small to tell.
 */
export function unansweredStep(asked: Case, watched: Watched): readonly LookAlike[] {
  const answer = response(asked, watched)
  if (!answer) return []
  const rightWay = Math.sign(answer.perKilogram) === EXPECTED_SIGN[watched]
  return [
    {
      id: 'unanswered-step',
      label: say`the system does not answer to its charge`,
      verdict: rightWay ? 'excluded' : 'explains',
      ...(rightWay ? {} : { seen: true as const }),
      evidence: answer.evidence,
    },
  ]
}
