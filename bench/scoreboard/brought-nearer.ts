import { familyOf, type WeighedSet } from '../../packages/diagnosis/src/index.ts'
import type { DeviceKind } from '../population/case.ts'
import { drawPlant } from '../population/draw-plant.ts'
import { type Random, seeded } from '../population/random.ts'
import { nameplateOf } from './judges/nameplate.ts'
import { decided, type Said, SHIPPED } from './judges/our-diagnosis.ts'

const STEP = 0.1

/** What is said after two steps, of all three sets of readings and of the newest alone. */
export interface BroughtNearer {
  readonly said: Said
  readonly ofNewest: Said
  /** Charge over the right charge minus 1, by then. */
  readonly chargeError: number
}

/**
 * A drawn plant whose charge alone is off, read before and after each of two steps of a tenth towards the right charge;
 * undefined where it does not run.
 */
export function broughtNearer(kind: DeviceKind, random: Random): BroughtNearer | undefined {
  const missing = random.one([-1, 1]) * random.uniform(0.12, 0.32)
  const plant = drawPlant(kind, seeded(random.seed()), {}, { troubles: [], chargeError: missing })
  const family = familyOf(nameplateOf(plant.plate), SHIPPED.habits)
  const step_kg = -Math.sign(missing) * STEP * plant.plate.charge_kg
  const sets: WeighedSet[] = []
  for (const steps of [0, 1, 2]) {
    const readings = plant.read('everything')
    if (!readings) return undefined
    sets.push({ readings, added_kg: steps * step_kg })
    if (steps < 2) plant.weigh(step_kg)
  }
  const newest = sets.slice(-1).map((set) => ({ ...set, added_kg: 0 }))
  const said = family.ok && decided(family.value, sets, plant.plate, SHIPPED)
  const ofNewest = family.ok && decided(family.value, newest, plant.plate, SHIPPED)
  return said && ofNewest ? { said, ofNewest, chargeError: plant.truth().chargeError } : undefined
}
