import { type Evidence, evidence, type Quantity, quantity, say } from '@chargewright/quantity'
import type { Dose } from './assessment.ts'
import { burns } from './flammable.ts'
import { FIRST_STEP_SHARE, GREATEST_STEP_SHARE, LIMITS } from './limit.ts'
import { response, type Watched } from './response.ts'
import type { Case } from './ruling.ts'

/**
 * The next weighed step. The first is a small share of the nameplate charge; once a weighed step lies behind, the
 * system's own response sets it: step = what is left to go · mass moved ÷ change seen, never more than a tenth of the
 * charge. Half of it where the refrigerant burns or the charge is critical. Steps and shares are *common practice*.
 *
 * @param toGo signed change wanted in the measure that the method watches, K
 */
export function nextDose(asked: Case, direction: Dose['direction'], watched: Watched | undefined, toGo: number): Dose {
  const nameplate = asked.visit.system.figures.nameplateCharge
  const most = nameplate ? nameplate.quantity.si * GREATEST_STEP_SHARE : LIMITS.habitualStep.quantity.si
  const measured = watched && response(asked, watched)
  const wanted = measured ? toGo / measured.perKilogram : undefined
  const agrees = wanted !== undefined && wanted !== 0 && wanted > 0 === (direction === 'into-system')

  const [mass, tree] =
    agrees && measured
      ? [
          Math.min(Math.abs(wanted), most),
          evidence(say`Sized by the response to the last step`, undefined, [measured.evidence]),
        ]
      : first(nameplate && quantity('mass', nameplate.quantity.si))
  const careful = isCareful(asked)
  const step = quantity('mass', careful ? mass / 2 : mass)
  const from = careful ? [tree, careful] : [tree]
  return {
    direction,
    mass: step,
    ...route(direction),
    evidence: evidence(say`Step of ${step}`, 'common practice', from),
  }
}

/** Vapour into the suction of the running system; out again from the liquid line, into a recovery cylinder. */
function route(direction: Dose['direction']): Pick<Dose, 'phase' | 'port' | 'compressor'> {
  return direction === 'into-system'
    ? { phase: 'vapour', port: 'suction', compressor: 'running' }
    : { phase: 'liquid', port: 'liquid-line', compressor: 'running' }
}

function first(nameplate: Quantity<'mass'> | undefined): readonly [number, Evidence] {
  if (!nameplate) {
    const { quantity: habit, source } = LIMITS.habitualStep
    return [habit.si, evidence(say`No nameplate charge is entered: a habitual small step of ${habit}`, source)]
  }
  const share = `${FIRST_STEP_SHARE * 100} %`
  return [
    nameplate.si * FIRST_STEP_SHARE,
    evidence(say`First step: ${share} of the nameplate charge ${nameplate}`, 'common practice'),
  ]
}

function isCareful({ visit, refrigerant }: Case): Evidence | undefined {
  if (burns(refrigerant.name) === 'yes') return evidence(say`Halved: the refrigerant burns`, 'common practice')
  if (visit.system.facts.meteringDevice === 'capillary')
    return evidence(say`Halved: the charge is critical`, 'common practice')
  return undefined
}
