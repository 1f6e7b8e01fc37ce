import { type Evidence, evidence, quantity, say } from '@chargewright/quantity'
import type { Dose } from './assessment.ts'
import type { Deviation } from './deviation.ts'
import { burns } from './flammable.ts'
import { FIRST_STEP_SHARE, GREATEST_STEP_SHARE, LIMITS } from './limit.ts'
import { response } from './response.ts'
import type { Case } from './ruling.ts'
import { twinDose } from './twin/twin-dose.ts'

/**
 * The next weighed step towards a target: by the twin of this system where its facts allow one, else by the system's own
 * response to the last weighed step, else a small share of the nameplate charge.
 */
export function nextDose(asked: Case, deviation: Deviation): Dose {
  const { direction } = deviation
  const byTwin = twinDose(asked, deviation)
  if (!byTwin.ok) {
    const [mass_kg, from] = careful(asked, byResponse(asked, deviation) ?? smallStep(asked))
    return { ...sized(direction, mass_kg, from), withoutTwin: byTwin.error }
  }
  const { mass, interval, evidence } = byTwin.value
  return { ...sized(direction, mass.si, [evidence]), interval }
}

function sized(direction: Dose['direction'], mass_kg: number, from: readonly Evidence[]): Dose {
  const mass = quantity('mass', mass_kg)
  return { direction, mass, ...route(direction), evidence: evidence(say`Step of ${mass}`, undefined, from) }
}

/** A mass and what it was reckoned from. */
export type Sized = readonly [mass_kg: number, from: readonly Evidence[]]

/** What is left to go · mass moved ÷ change seen, never more than a tenth of the charge: *common practice*. */
function byResponse(asked: Case, { direction, watched, value, target }: Deviation): Sized | undefined {
  const measured = response(asked, watched)
  if (!measured) return undefined
  const wanted = (target.si - value.si) / measured.perKilogram
  if (wanted === 0 || wanted > 0 !== (direction === 'into-system')) return undefined
  const nameplate = asked.visit.system.figures.nameplateCharge
  const most = nameplate ? nameplate.quantity.si * GREATEST_STEP_SHARE : LIMITS.habitualStep.quantity.si
  const tree = evidence(say`Sized by the response to the last step`, 'common practice', [measured.evidence])
  return [Math.min(Math.abs(wanted), most), [tree]]
}

/** Vapour into the suction of the running system; out again from the liquid line, into a recovery cylinder. */
function route(direction: Dose['direction']): Pick<Dose, 'phase' | 'port' | 'compressor'> {
  return direction === 'into-system'
    ? { phase: 'vapour', port: 'suction', compressor: 'running' }
    : { phase: 'liquid', port: 'liquid-line', compressor: 'running' }
}

function smallStep({ visit }: Case): Sized {
  const nameplate = visit.system.figures.nameplateCharge
  if (!nameplate) {
    const { quantity: habit, source } = LIMITS.habitualStep
    return [habit.si, [evidence(say`No nameplate charge is entered: a habitual small step of ${habit}`, source)]]
  }
  const share = `${FIRST_STEP_SHARE * 100} %`
  const tree = evidence(say`First step: ${share} of the nameplate charge ${nameplate.quantity}`, 'common practice')
  return [nameplate.quantity.si * FIRST_STEP_SHARE, [tree]]
}

/** Half of it where the refrigerant burns or the charge is critical: *common practice*. */
export function careful({ visit, refrigerant }: Case, [mass_kg, from]: Sized): Sized {
  const because =
    burns(refrigerant.name) === 'yes'
      ? say`Halved: the refrigerant burns`
      : visit.system.facts.meteringDevice === 'capillary'
        ? say`Halved: the charge is critical`
        : undefined
  return because ? [mass_kg / 2, [...from, evidence(because, 'common practice')]] : [mass_kg, from]
}
