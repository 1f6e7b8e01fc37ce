import {
  type DoseEstimate,
  type DoseTarget,
  dose,
  learn,
  type Observation,
  type System,
  size,
} from '../../../packages/cycle/src/index.ts'
import { SHIPPED_CALIBRATION } from '../../../packages/diagnosis/src/index.ts'
import type { Plate } from '../../population/case.ts'
import { nameplateOf } from '../judges/nameplate.ts'
import { observed } from './observed.ts'
import { MOST_STEPS, type Policy, type Run } from './policy.ts'

/**
 * The twin alone: learn from the readings, weigh its dose, learn again; stop when what is left is small against the
 * charge. It never asks whether the charge is the cause.
 */
export const twinDose: Policy = {
  name: 'twin’s dose',
  run: (plant) => {
    const twin = size(nameplateOf(plant.plate))
    if (!twin.ok) return undefined
    const sets: Observation[] = []
    let [added, steps, harmful] = [0, 0, 0]
    let first: Run['first']
    const ended = (how: Run['ended']): Run => ({ ended: how, steps, harmful, asked: 0, ...(first ? { first } : {}) })
    for (;;) {
      const readings = plant.read('everything')
      const set = readings && observed(plant.plate, readings, added, SHIPPED_CALIBRATION)
      if (!set) return steps === 0 ? undefined : ended('no longer runs')
      sets.push(set)
      const next = doseAfter(twin.value, sets, nameplateCharge(plant.plate))
      if (!next) return steps === 0 ? undefined : ended('no verdict')
      first ??= { low_kg: next.low_kg, high_kg: next.high_kg }
      if (Math.abs(next.toGo_kg) < NEAR * plant.plate.charge_kg) return ended('satisfied')
      if (steps === MOST_STEPS) return ended('too many steps')
      if (plant.weigh(next.step_kg).harm) harmful++
      added += next.step_kg
      steps++
    }
  },
}

/** What is left to go that no longer calls for a step, of the nameplate charge. */
export const NEAR = 0.025

/** The dose to the target after all sets so far; undefined where the twin runs in no such state. */
export function doseAfter(twin: System, sets: readonly Observation[], target: DoseTarget): DoseEstimate | undefined {
  const learned = learn(twin, sets)
  return learned && dose(twin, learned, sets.at(-1)!, target, { flammable: false })
}

export const nameplateCharge = ({ charge_kg }: Plate): DoseTarget => ({ kind: 'charge', charge_kg, sd_kg: 0 })
