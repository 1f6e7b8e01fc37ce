import { dose, learn } from '@chargewright/cycle'
import { type Evidence, evidence, type Quantity, quantity, say } from '@chargewright/quantity'
import type { Dose } from '../assessment.ts'
import type { Deviation } from '../deviation.ts'
import { burns } from '../flammable.ts'
import type { Case } from '../ruling.ts'
import { observedSets } from './observed-sets.ts'
import { twinOf } from './twin-of.ts'

/** A step sized by the twin: what it thinks is to go, with the interval in which nine of ten such systems lie. */
export interface TwinDose {
  readonly mass: Quantity<'mass'>
  readonly interval: NonNullable<Dose['interval']>
  readonly evidence: Evidence
}

/** Weighted squares left unexplained per reading; above it the model does not describe this system. Own choice. */
const WORST_MISFIT = 4

/**
 * The step to the target by the twin of this very system, which has learnt from every settled set of readings of the
 * visit. Undefined where the facts allow no twin, where it cannot explain the readings, or where it disagrees with the
 * finding about the direction: then the habitual small step is the safer one.
 */
export function twinDose(asked: Case, { direction, watched, target }: Deviation): TwinDose | undefined {
  const twin = twinOf(asked)
  const sets = observedSets(asked)
  const last = sets.at(-1)
  const learned = twin && last && learn(twin, sets)
  if (!twin || !last || !learned || !(learned.misfit <= WORST_MISFIT)) return undefined

  const wanted = { kind: watched, value_K: target.si, sd_K: target.u ?? 0 }
  const found = dose(twin, learned, last, wanted, { flammable: burns(asked.refrigerant.name) === 'yes' })
  if (!found) return undefined
  const sign = direction === 'into-system' ? 1 : -1
  const step = sign * found.step_kg
  if (!(step > 0)) return undefined

  const toGo = quantity('mass', sign * found.toGo_kg)
  const ends = [sign * found.low_kg, sign * found.high_kg].sort((a, b) => a - b) as [number, number]
  const interval = { low: quantity('mass', Math.max(ends[0], 0)), high: quantity('mass', ends[1]) }
  const statement = say`${toGo} to the target; ${interval.low} to ${interval.high} would fit these readings (90 %)`
  const charge = evidence(
    say`The readings fit a charge of ${quantity('mass', learned.charge_kg, learned.chargeSd_kg)}`,
    'estimated by model',
  )
  return {
    mass: quantity('mass', step),
    interval,
    evidence: evidence(statement, 'estimated by model: twin sized from the nameplate', [
      charge,
      ...found.reasons.map((reason) => evidence(reason, 'common practice')),
    ]),
  }
}
