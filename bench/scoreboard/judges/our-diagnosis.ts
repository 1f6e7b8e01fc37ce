import { decide } from '../../../packages/charging/src/decision/decide.ts'
import type { Decision } from '../../../packages/charging/src/decision/decision.ts'
import { truthsOf } from '../../../packages/charging/src/decision/expected-loss.ts'
import { UNIT_TO_UNIT_K } from '../../../packages/charging/src/diagnosis/makers-word.ts'
import { type Habits, habitsOf } from '../../../packages/cycle/src/index.ts'
import {
  type Calibration,
  type Cause,
  type Diagnosis,
  diagnose,
  type Family,
  familyOf,
  type MakersWord,
  SHIPPED_CALIBRATION,
  type WeighedSet,
} from '../../../packages/diagnosis/src/index.ts'
import type { Plate } from '../../population/case.ts'
import type { Judge, Verdict } from '../verdict.ts'
import { nameplateOf } from './nameplate.ts'
import { READINGS_BEHIND } from './readings-behind.ts'

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
    return verdictOf(said)
  },
})

/** What ours may know besides: the maker's chart, and what it asks for, one reading after the other. */
export interface Informed {
  readonly chart: boolean
  readonly answered: boolean
}

/** Ours where more is known than an ordinary visit tells. */
export const informedDiagnosis = (grounds: Grounds, name: string, { chart, answered }: Informed): Judge => ({
  name,
  judge: ({ plate, readings, everything = readings, makersSuperheat_K }) => {
    const family = familyOf(nameplateOf(plate), grounds.habits)
    if (!family.ok) return { kind: 'no-verdict' }
    const maker: MakersWord =
      chart && makersSuperheat_K !== undefined ? { superheat: { mean: makersSuperheat_K, sd: UNIT_TO_UNIT_K } } : {}
    for (let known = readings; ; ) {
      const said = decided(family.value, [{ readings: known, added_kg: 0 }], plate, { ...grounds, maker })
      const asked = answered && said?.decision.kind === 'read' ? READINGS_BEHIND[said.decision.next.observable] : []
      const more = asked.filter((key) => known[key] === undefined && everything[key] !== undefined)
      if (more.length === 0) return verdictOf(said)
      known = { ...known, ...Object.fromEntries(more.map((key) => [key, everything[key]])) }
    }
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
  { calibration, maker = {} }: Pick<Grounds, 'calibration'> & { readonly maker?: MakersWord },
): Said | undefined {
  const diagnosis = diagnose(family, sets, { calibration, maker })
  if (!diagnosis.ok) return undefined
  return {
    diagnosis: diagnosis.value,
    decision: decide(diagnosis.value, { rightCharge_kg: charge_kg, hasReceiver: false }),
  }
}

export const SHIPPED: Grounds = { calibration: SHIPPED_CALIBRATION, habits: habitsOf('comfort-cooling') }

function verdictOf(said: Said | undefined): Verdict {
  if (!said) return { kind: 'no-verdict' }
  const { decision, diagnosis } = said
  const truths = truthsOf(diagnosis.singles)
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
