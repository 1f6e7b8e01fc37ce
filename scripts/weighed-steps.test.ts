import { describe, expect, test } from 'vitest'
import { seeded } from '../bench/population/random.ts'
import { broughtNearer } from '../bench/scoreboard/brought-nearer.ts'
import { DEVICES } from '../bench/scoreboard/devices.ts'

const PLANTS = 12

describe.each(DEVICES)('the charge of a %s plant brought nearer in two weighed steps', (kind) => {
  const plants = Array.from({ length: PLANTS }, (_, i) => broughtNearer(kind, seeded(100 + i))).filter((one) => !!one)

  test('[property] does not end in another trouble', () => {
    expect(plants.length).toBeGreaterThan(PLANTS / 2)
    expect(plants.filter(({ said }) => said.decision.kind === 'other').length).toBeLessThanOrEqual(1)
  })

  test('[property] and the readings of all three sets stay explained', () => {
    expect(plants.filter(({ said }) => said.diagnosis.misfit.unexplained)).toHaveLength(0)
  })
})
