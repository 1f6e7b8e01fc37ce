import type { Decision } from '../../../packages/charging/src/decision/decision.ts'
import { type Family, familyOf, type Observable, type WeighedSet } from '../../../packages/diagnosis/src/index.ts'
import type { Plant, ReadingSet } from '../../population/case.ts'
import { nameplateOf } from '../judges/nameplate.ts'
import { decided, type Grounds, type Said } from '../judges/our-diagnosis.ts'
import { only, READINGS_BEHIND } from '../judges/readings-behind.ts'
import { MOST_STEPS, type Policy, type Run } from './policy.ts'
import { NEAR } from './twin-dose.ts'

/**
 * The whole way: diagnose, read what is asked for, and weigh only while the charge is the cause; after each step all sets
 * are judged together. Fewer readings than an ordinary visit has are never forced on it, more only when it asks.
 */
export const diagnosed = (grounds: Grounds): Policy => ({
  name: 'diagnosis and decision',
  run: (plant) => {
    const family = familyOf(nameplateOf(plant.plate), grounds.habits)
    const usual = plant.read('ordinary')
    if (!family.ok || !usual) return undefined
    const taken = new Set(Object.keys(usual) as (keyof ReadingSet)[])
    const sets: WeighedSet[] = []
    let [added, steps, harmful, asked] = [0, 0, 0, 0]
    let first: Run['first']
    const ended = (how: Run['ended']): Run => ({ ended: how, steps, harmful, asked, ...(first ? { first } : {}) })
    for (;;) {
      const settled = settle(plant, family.value, sets, added, taken, grounds)
      if (!settled) return steps === 0 ? undefined : ended('no longer runs')
      asked += settled.asked
      const toGo = left(settled.said.decision, added)
      if (typeof toGo === 'string') return ended(toGo)
      first ??= { low_kg: toGo.low_kg, high_kg: toGo.high_kg }
      if (Math.abs(toGo.kg) < NEAR * plant.plate.charge_kg) return ended('satisfied')
      if (steps === MOST_STEPS) return ended('too many steps')
      const step = stepOf(toGo, plant.plate.charge_kg, steps)
      if (plant.weigh(step).harm) harmful++
      added += step
      steps++
    }
  },
})

/**
 * What is still to weigh, kg, negative to recover: the decision is about the charge that was found, so what was weighed since
 * is taken off; or why it ends here. Found right after all, the charge goes back to what it was.
 */
function left(decision: Decision, added: number): ToGo | Run['ended'] {
  switch (decision.kind) {
    case 'add':
    case 'recover': {
      const sign = decision.kind === 'add' ? 1 : -1
      const [one, other] = [sign * decision.low_kg, sign * decision.high_kg]
      return {
        kg: sign * decision.mass_kg - added,
        low_kg: Math.min(one, other) - added,
        high_kg: Math.max(one, other) - added,
      }
    }
    case 'hold':
      return added === 0 ? 'satisfied' : { kg: -added, low_kg: -added, high_kg: -added }
    case 'other':
      return 'another trouble named'
    case 'read':
    case 'undecided':
    case 'refused':
      return 'no verdict'
  }
}

interface ToGo {
  readonly kg: number
  readonly low_kg: number
  readonly high_kg: number
}

/** Reads the settled system, and again what is asked for, until something else is said; the set is kept. */
function settle(
  plant: Plant,
  family: Family,
  sets: WeighedSet[],
  added_kg: number,
  taken: Set<keyof ReadingSet>,
  grounds: Grounds,
): { readonly said: Said; readonly asked: number } | undefined {
  const everything = plant.read('everything')
  if (!everything) return undefined
  for (let asked = 0; ; asked++) {
    const now: WeighedSet = { readings: only(everything, taken), added_kg }
    const said = decided(family, [...sets, now], plant.plate, grounds)
    if (!said) return undefined
    const wanted = said.decision.kind === 'read' ? toTake(said.decision.next.observable, everything, taken) : []
    if (wanted.length === 0) {
      sets.push(now)
      return { said, asked }
    }
    for (const key of wanted) taken.add(key)
  }
}

const toTake = (observable: Observable, all: ReadingSet, taken: ReadonlySet<keyof ReadingSet>) =>
  READINGS_BEHIND[observable].filter((key) => all[key] !== undefined && !taken.has(key))

/** Of the nameplate charge: before the system has answered to a weighed step, and after. */
const FIRST_STEP = 0.15
const LATER_STEP = 0.25
/** Width of a normal 90 % interval in standard deviations. */
const NINETY = 3.29

/** As the twin's own dose: adding stops one standard deviation short and is approached from below; recovery does not. */
function stepOf({ kg, low_kg, high_kg }: ToGo, charge_kg: number, steps: number): number {
  const most = (steps === 0 ? FIRST_STEP : LATER_STEP) * charge_kg
  const wish = kg > 0 ? Math.max(kg - (high_kg - low_kg) / NINETY, kg / 2) : kg
  return Math.min(Math.max(wish, -most), most)
}
