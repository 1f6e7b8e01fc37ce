import { type Learned, learn, type Observation, type System } from '@chargewright/cycle'
import { asTwinReads, calibratedAs, type DeviceCalibration, SHIPPED_CALIBRATION } from '@chargewright/diagnosis'
import { describeProblem, fail, ok, type Result, type Statement, say } from '@chargewright/quantity'
import type { Case } from '../ruling.ts'
import { observedSets } from './observed-sets.ts'
import { sizedSystem } from './sized-system.ts'

/** The twin of a system with what it has learnt from the readings of a visit. */
export interface LearntTwin {
  /** As sized from the nameplate. */
  readonly system: System
  /** How the twin errs on systems with such a device; undefined where nobody knows. */
  readonly calibration: DeviceCalibration | undefined
  /** The settled sets of readings as the twin would have had them: one before the first weighed step and one after each. */
  readonly sets: readonly [Observation, ...Observation[]]
  readonly learned: Learned
}

/** Weighted squares left unexplained per reading; above it the model does not describe this system. Own choice. */
const WORST_MISFIT = 4

/**
 * The twin of this very system, which has learnt from every settled set of readings of the visit; or in words why there
 * is none: facts are missing or contradict each other, a receiver hides the charge anyway, nothing was read that
 * teaches, or the twin cannot explain what was read.
 */
export function learntTwin(asked: Pick<Case, 'visit' | 'refrigerant'>): Result<LearntTwin, Statement> {
  const { system } = asked.visit
  if (system.facts.receiver) return fail(say`a receiver hides the charge, so the readings do not answer to it`)
  const sized = sizedSystem(system)
  if (!sized.ok) {
    return fail(say`the facts do not make a model of this system (${sized.error.map(describeProblem).join('; ')})`)
  }
  const kind = calibratedAs(sized.value.device.kind)
  const calibration = kind && SHIPPED_CALIBRATION.devices[kind]
  const [first, ...later] = observedSets(asked).map((set) => (calibration ? asTwinReads(set, calibration) : set))
  if (!first) {
    return fail(say`outdoor temperature, return air with its wet bulb, and superheat were never read together`)
  }
  const sets = [first, ...later] as const
  const learned = learn(sized.value, sets)
  if (!learned) return fail(say`the model of this system does not run steadily in these conditions`)
  if (!(learned.misfit <= WORST_MISFIT)) {
    return fail(say`the model of this system cannot explain these readings, whatever its charge`)
  }
  return ok({ system: sized.value, calibration, sets, learned })
}
