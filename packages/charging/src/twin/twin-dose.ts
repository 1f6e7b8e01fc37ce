import { type DoseTarget, dose, statedSd } from '@chargewright/cycle'
import { targetAsTwinReads } from '@chargewright/diagnosis'
import {
  type Evidence,
  evidence,
  fail,
  ok,
  type Quantity,
  quantity,
  type Result,
  type Statement,
  say,
} from '@chargewright/quantity'
import type { Dose } from '../assessment.ts'
import type { Deviation } from '../deviation.ts'
import { burns } from '../flammable.ts'
import type { Case } from '../ruling.ts'
import { learntTwin } from './learnt-twin.ts'

/** A step sized by the twin: what it thinks is to go, with the interval in which nine of ten such systems lie. */
export interface TwinDose {
  readonly mass: Quantity<'mass'>
  readonly interval: NonNullable<Dose['interval']>
  readonly evidence: Evidence
}

/**
 * The step to the target by the twin of this very system. In words why there is none, where there is no twin, where it
 * sees no way to the target, or where it disagrees with the finding about the direction: then the habitual small step is
 * the safer one.
 */
export function twinDose(asked: Case, { direction, watched, target }: Deviation): Result<TwinDose, Statement> {
  const twin = learntTwin(asked)
  if (!twin.ok) return twin
  const { system, calibration, sets, learned } = twin.value

  const read: DoseTarget = { kind: watched, value_K: target.si, sd_K: target.u ?? 0 }
  const wanted = calibration ? targetAsTwinReads(read, calibration) : read
  const care = { flammable: burns(asked.refrigerant.name) === 'yes' }
  const found = dose(system, learned, sets.at(-1)!, wanted, care)
  if (!found) return fail(say`the model of this system does not reach the target at any charge`)
  const sign = direction === 'into-system' ? 1 : -1
  const step = sign * found.step_kg
  if (!(step > 0)) return fail(say`the model of this system would move the charge the other way`)

  const toGo = quantity('mass', sign * found.toGo_kg)
  const ends = [sign * found.low_kg, sign * found.high_kg].sort((a, b) => a - b) as [number, number]
  const interval = { low: quantity('mass', Math.max(ends[0], 0)), high: quantity('mass', ends[1]) }
  const statement = say`${toGo} to the target; ${interval.low} to ${interval.high} would fit these readings (90 %)`
  const charge = evidence(
    say`The readings fit a charge of ${quantity('mass', learned.charge_kg, statedSd(system, learned.chargeSd_kg))}`,
    'estimated by model',
  )
  return ok({
    mass: quantity('mass', step),
    interval,
    evidence: evidence(statement, 'estimated by model of this system, sized from its nameplate', [
      charge,
      ...found.reasons.map((reason) => evidence(reason, 'common practice')),
    ]),
  })
}
