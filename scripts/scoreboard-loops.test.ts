import { describe, expect, test } from 'vitest'
import type { Plant, Plate, ReadingSet } from '../bench/population/case.ts'
import { type LoopRun, loopResults } from '../bench/scoreboard/closed-loop/loop-result.ts'
import { plainRule, ruleOfThumb_K } from '../bench/scoreboard/closed-loop/plain-rule.ts'
import type { Run } from '../bench/scoreboard/closed-loop/policy.ts'
import { propertiesNamed } from '../bench/scoreboard/judges/measured.ts'
import { asking } from '../bench/scoreboard/run/asking.ts'
import type { Judge } from '../bench/scoreboard/verdict.ts'

const { dewPressure, bubblePressure } = propertiesNamed('R-410A')
const kelvin = (F: number) => (F + 459.67) / 1.8
const PLATE: Plate = {
  refrigerant: 'R-410A',
  device: 'thermostatic',
  capacity_W: 10_000,
  charge_kg: 2,
  cop: 3,
  subcooling_K: 5,
}
const READINGS: ReadingSet = {
  outdoor_K: kelvin(95),
  returnAir_K: kelvin(80),
  returnWetBulb_K: kelvin(67),
  suctionPressure_Pa: dewPressure(280),
  suctionLine_K: 286,
}

describe('what closed loops come to', () => {
  const run = (steps: number, change: Partial<Run> = {}): Run => ({
    ended: 'satisfied',
    steps,
    harmful: 0,
    asked: 0,
    ...change,
  })
  const of = (before: number, after: number, made?: Run, held?: boolean): LoopRun => ({
    policy: 'toy',
    kind: 'capillary',
    hidden: 'wrong charge',
    before,
    after,
    ...(made ? { run: made } : {}),
    ...(held === undefined ? {} : { held }),
  })

  test('[property] counted by hand over five plants', () => {
    const [result] = loopResults([
      of(-0.2, -0.03, run(2), true),
      of(0.2, 0.08, run(1, { asked: 2 }), false),
      of(-0.1, -0.1, run(0, { ended: 'no verdict', asked: 3 })),
      of(0, 0.3, run(4, { harmful: 2 }), true),
      of(-0.3, -0.3),
    ])
    expect(result).toMatchObject({ plants: 5, notBegun: 1, askedMean: 1 })
    expect(result!.startRms).toBeCloseTo(Math.sqrt((0.04 + 0.04 + 0.01 + 0 + 0.09) / 5), 12)
    expect(result!.rms).toBeCloseTo(Math.sqrt((0.0009 + 0.0064 + 0.01 + 0.09 + 0.09) / 5), 12)
    const counted = (
      name: 'within5' | 'within10' | 'stepped' | 'steppedWithin10' | 'harmedPlants' | 'noVerdict' | 'coverage',
    ) => [result![name].hits, result![name].of]
    expect(counted('within5')).toEqual([1, 5])
    expect(counted('within10')).toEqual([3, 5])
    expect(counted('stepped')).toEqual([3, 5])
    expect(counted('steppedWithin10')).toEqual([2, 3])
    expect(counted('harmedPlants')).toEqual([1, 5])
    expect(counted('noVerdict')).toEqual([2, 5])
    expect(counted('coverage')).toEqual([2, 3])
    expect(result!.steps?.value).toBe(2)
  })

  test('[property] every policy, device and hidden trouble is a group of its own', () => {
    const runs = [of(0, 0), { ...of(0, 0), policy: 'other' }, { ...of(0, 0), hidden: 'another trouble' as const }]
    expect(loopResults([...runs, ...runs]).map(({ plants }) => plants)).toEqual([2, 2, 2])
  })
})

describe('the plain rule at a plant', () => {
  /** Subcooling rises by 1 K with every 2 % of the charge; 5 K is right. */
  function linear(missing: number): Plant {
    let error = -missing
    const condensing = kelvin(115)
    return {
      plate: PLATE,
      right_kg: 2,
      read: () => ({
        ...READINGS,
        liquidPressure_Pa: bubblePressure(condensing),
        liquidLine_K: condensing - (5 + error / 0.02),
      }),
      makersSuperheat_K: () => undefined,
      weigh: (kg) => {
        error += kg / 2
        return { harm: error > 0.1 }
      },
      truth: () => ({ troubles: [], chargeError: error }),
    }
  }

  test('[property] 12 % short: two steps of 5 % bring the subcooling within 3 °F of the nameplate', () => {
    const plant = linear(0.12)
    expect(plainRule.run(plant)).toMatchObject({ ended: 'satisfied', steps: 2, harmful: 0 })
    expect(plant.truth().chargeError).toBeCloseTo(-0.02, 9)
  })

  test('[limit] a plant that never answers is left after twelve steps, one that cannot be read is not begun', () => {
    const deaf: Plant = { ...linear(0.5), weigh: () => ({ harm: true }) }
    expect(plainRule.run(deaf)).toMatchObject({ ended: 'too many steps', steps: 12, harmful: 12 })
    expect(plainRule.run({ ...deaf, read: () => undefined })).toBeUndefined()
  })

  test('[property] the rule of thumb at 95 °F and 67 °F is 13 °F', () => {
    // (3 · 67 − 80 − 95)/2 = 13 °F; common practice.
    expect(ruleOfThumb_K(kelvin(95), kelvin(67))).toBeCloseTo(13 / 1.8, 9)
  })
})

describe('asking for readings one by one', () => {
  /** Wants the subcooling, then the discharge line, and answers when it has both. */
  const curious: Judge = {
    name: 'curious',
    judge: ({ readings }) => {
      if (readings.liquidLine_K === undefined) return { kind: 'no-verdict', next: 'subcooling' }
      return readings.dischargeLine_K === undefined ? { kind: 'no-verdict', next: 'discharge' } : { kind: 'hold' }
    },
  }
  const full: ReadingSet = {
    ...READINGS,
    liquidPressure_Pa: 2.5e6,
    liquidLine_K: 310,
    dischargeLine_K: 350,
    power_W: 3000,
  }

  test('[property] it gets what it asks for and nothing else', () => {
    // Five to begin with, two behind the subcooling, one more.
    expect(asking(curious, { plate: PLATE, readings: full })).toEqual({ readings: 8, verdict: { kind: 'hold' } })
  })

  test('[limit] what was not read cannot be had, and it ends without a verdict', () => {
    const { dischargeLine_K: _, ...without } = full
    expect(asking(curious, { plate: PLATE, readings: without })).toEqual({
      readings: 7,
      verdict: { kind: 'no-verdict', next: 'discharge' },
    })
  })
})
