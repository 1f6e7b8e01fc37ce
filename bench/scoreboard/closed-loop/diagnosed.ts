import { UNIT_TO_UNIT_K } from '../../../packages/charging/src/diagnosis/makers-word.ts'
import type { DoseTarget, Observation } from '../../../packages/cycle/src/index.ts'
import {
  type Family,
  familyOf,
  type MakersWord,
  type Observable,
  targetAsTwinReads,
  type WeighedSet,
} from '../../../packages/diagnosis/src/index.ts'
import type { Plant, ReadingSet } from '../../population/case.ts'
import { nameplateOf } from '../judges/nameplate.ts'
import { decided, type Grounds, type Said } from '../judges/our-diagnosis.ts'
import { only, READINGS_BEHIND } from '../judges/readings-behind.ts'
import { observed } from './observed.ts'
import { MOST_STEPS, type Policy, type Run } from './policy.ts'
import { doseAfter, NEAR, nameplateCharge } from './twin-dose.ts'

/**
 * The whole way: diagnose, read what is asked for, and touch the charge only when that is the cause; then the twin's dose
 * says how much, learns from every weighed step, and is stopped when another trouble shows. Where diagnosis and dose
 * disagree about the direction, nothing is weighed.
 *
 * The dose, not the diagnosis, sizes the steps: after a step it learns this unit's own response, and ended nearer to the
 * right charge and with less harm in trials of both.
 *
 * @param chart whether the maker's chart is at hand: then it is the target behind a fixed device, else the nameplate charge
 */
export const diagnosed = (grounds: Grounds, chart = false): Policy => ({
  name: chart ? 'diagnosis, decision, dose, with the maker’s chart' : 'diagnosis, decision, dose',
  run: (plant) => {
    const family = familyOf(nameplateOf(plant.plate), grounds.habits)
    const usual = plant.read('ordinary')
    if (!family.ok || !usual) return undefined
    const taken = new Set(Object.keys(usual) as (keyof ReadingSet)[])
    const own = grounds.calibration.devices[plant.plate.device]
    const sets: WeighedSet[] = []
    const seen: Observation[] = []
    let [added, steps, harmful, asked] = [0, 0, 0, 0]
    let first: Run['first']
    const ended = (how: Run['ended']): Run => ({ ended: how, steps, harmful, asked, ...(first ? { first } : {}) })
    for (;;) {
      const settled = settle(plant, family.value, sets, added, taken, grounds, chart)
      const now = settled && observed(plant.plate, settled.readings, added, grounds.calibration)
      if (!now) return steps === 0 ? undefined : ended('no longer runs')
      asked += settled.asked
      seen.push(now)
      const { kind } = settled.said.decision
      if (kind === 'other') return ended('another trouble named')
      if (steps === 0 && kind === 'hold') return ended('satisfied')
      if (steps === 0 && kind !== 'add' && kind !== 'recover') return ended('no verdict')
      const asked_K = chart ? plant.makersSuperheat_K(settled.readings) : undefined
      const target: DoseTarget =
        asked_K === undefined
          ? nameplateCharge(plant.plate)
          : targetAsTwinReads({ kind: 'superheat', value_K: asked_K, sd_K: UNIT_TO_UNIT_K }, own)
      const next = doseAfter(family.value.nominal, seen, target)
      if (!next || (steps === 0 && next.toGo_kg > 0 !== (kind === 'add'))) return ended('no verdict')
      first ??= { low_kg: next.low_kg, high_kg: next.high_kg }
      if (Math.abs(next.toGo_kg) < NEAR * plant.plate.charge_kg) return ended('satisfied')
      if (steps === MOST_STEPS) return ended('too many steps')
      if (plant.weigh(next.step_kg).harm) harmful++
      added += next.step_kg
      steps++
    }
  },
})

interface Settled {
  readonly said: Said
  readonly readings: ReadingSet
  /** How often one more reading was asked for and taken. */
  readonly asked: number
}

/** Reads the settled system, and again what is asked for, until something else is said; the set is kept. */
function settle(
  plant: Plant,
  family: Family,
  sets: WeighedSet[],
  added_kg: number,
  taken: Set<keyof ReadingSet>,
  grounds: Grounds,
  chart: boolean,
): Settled | undefined {
  const everything = plant.read('everything')
  if (!everything) return undefined
  const mean = chart ? plant.makersSuperheat_K(sets[0]?.readings ?? everything) : undefined
  const maker: MakersWord = mean === undefined ? {} : { superheat: { mean, sd: UNIT_TO_UNIT_K } }
  for (let asked = 0; ; asked++) {
    const readings = only(everything, taken)
    const said = decided(family, [...sets, { readings, added_kg }], plant.plate, { ...grounds, maker })
    if (!said) return undefined
    const wanted = said.decision.kind === 'read' ? toTake(said.decision.next.observable, everything, taken) : []
    if (wanted.length === 0) {
      sets.push({ readings, added_kg })
      return { said, readings, asked }
    }
    for (const key of wanted) taken.add(key)
  }
}

const toTake = (observable: Observable, all: ReadingSet, taken: ReadonlySet<keyof ReadingSet>) =>
  READINGS_BEHIND[observable].filter((key) => all[key] !== undefined && !taken.has(key))
