import { decide } from '../../../packages/charging/src/decision/decide.ts'
import type { Decision } from '../../../packages/charging/src/decision/decision.ts'
import { truthsOf } from '../../../packages/charging/src/decision/expected-loss.ts'
import { type Habits, habitsOf } from '../../../packages/cycle/src/index.ts'
import {
  type Calibration,
  type Cause,
  type Diagnosis,
  diagnose,
  type Family,
  familyOf,
  SHIPPED_CALIBRATION,
  type WeighedSet,
} from '../../../packages/diagnosis/src/index.ts'
import type { Plate } from '../../population/case.ts'
import type { Judge, Verdict } from '../verdict.ts'
import { nameplateOf } from './nameplate.ts'

/** What our own judge rests on: the calibration shipped, and the twin's habits, right or deliberately wrong. */
export interface Grounds {
  readonly calibration: Calibration
  readonly habits: Habits
}

/** The diagnosis by the twin with the decision by expected loss, as shipped. No earlier visit is known. */
export const ourDiagnosis = (grounds: Grounds): Judge => ({
  name: 'diagnosis and decision',
  judge: ({ plate, readings }) => {
    const family = familyOf(nameplateOf(plate), grounds.habits)
    const said = family.ok ? decided(family.value, [{ readings, added_kg: 0 }], plate, grounds) : undefined
    return said ? verdictOf(said.decision, said.diagnosis) : { kind: 'no-verdict' }
  },
})

export interface Said {
  readonly diagnosis: Diagnosis
  readonly decision: Decision
}

/** Undefined where the readings cannot be diagnosed at all. */
export function decided(
  family: Family,
  sets: readonly WeighedSet[],
  { charge_kg }: Plate,
  { calibration }: Pick<Grounds, 'calibration'>,
): Said | undefined {
  const diagnosis = diagnose(family, sets, { calibration })
  if (!diagnosis.ok) return undefined
  return {
    diagnosis: diagnosis.value,
    decision: decide(diagnosis.value, { rightCharge_kg: charge_kg, hasReceiver: false }),
  }
}

export const SHIPPED: Grounds = { calibration: SHIPPED_CALIBRATION, habits: habitsOf('comfort-cooling') }

function verdictOf(decision: Decision, { singles }: Diagnosis): Verdict {
  const truths = truthsOf(singles)
  const probability = (cause: Cause) => truths[cause] ?? 0
  switch (decision.kind) {
    case 'add':
    case 'recover': {
      const { kind, mass_kg: kg, low_kg, high_kg } = decision
      const sure = probability(kind === 'add' ? 'short-of-charge' : 'overcharged')
      return { kind, amount: { kg, low_kg, high_kg }, sure }
    }
    case 'hold':
      return { kind: 'hold', sure: probability('sound') }
    case 'other':
      return { kind: 'other', cause: decision.cause, sure: probability(decision.cause) }
    case 'read':
      return { kind: 'no-verdict', next: decision.next.observable }
    case 'undecided':
    case 'refused':
      return { kind: 'no-verdict' }
  }
}
