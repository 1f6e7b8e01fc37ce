import { describe, expect, test } from 'vitest'
import { drawPlant } from '../bench/population/draw-plant.ts'
import { seeded } from '../bench/population/random.ts'
import { DEVICES } from '../bench/scoreboard/devices.ts'
import { nameplateOf } from '../bench/scoreboard/judges/nameplate.ts'
import { decided, SHIPPED } from '../bench/scoreboard/judges/our-diagnosis.ts'
import { familyOf, type WeighedSet } from '../packages/diagnosis/src/index.ts'

const PLANTS = 12
const STEP = 0.1

/**
 * A drawn plant whose charge alone is off, read before and after each of two steps towards the right charge; undefined
 * where it does not run.
 */
function afterTwoSteps(kind: (typeof DEVICES)[number], random = seeded(1)) {
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
  return family.ok ? decided(family.value, sets, plant.plate, SHIPPED) : undefined
}

describe.each(DEVICES)('the charge of a %s plant brought nearer in two weighed steps', (kind) => {
  const said = Array.from({ length: PLANTS }, (_, i) => afterTwoSteps(kind, seeded(100 + i))).filter((one) => !!one)

  test('[property] does not end in another trouble', () => {
    expect(said.length).toBeGreaterThan(PLANTS / 2)
    expect(said.filter(({ decision }) => decision.kind === 'other').length).toBeLessThanOrEqual(1)
  })

  test('[property] and the readings of all three sets stay explained', () => {
    expect(said.filter(({ diagnosis }) => diagnosis.misfit.unexplained)).toHaveLength(0)
  })
})
