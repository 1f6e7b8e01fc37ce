import { describe, expect, it } from 'vitest'
import { atRest } from '../bench/population/at-rest.ts'
import type { Case } from '../bench/population/case.ts'
import { samples } from '../bench/population/check/sample.ts'
import { drawCases } from '../bench/population/draw-cases.ts'
import { drawPlant } from '../bench/population/draw-plant.ts'
import { seeded } from '../bench/population/random.ts'

const drawn = (half: Case['half'], count: number) => [...drawCases({ kind: 'capillary', half, count, seed: 12 })]

describe('drawn cases', () => {
  const seen = drawn('seen', 120)

  it('[property] come again from the same seed, fewer of them first', () => {
    expect(drawn('seen', 5)).toEqual(seen.slice(0, 5))
  })

  it('[property] of the two halves have no plant in common', () => {
    const plates = new Set(seen.map(({ plate }) => JSON.stringify(plate)))
    for (const { id, plate } of drawn('unseen', 20)) {
      expect(id % 2).toBe(0)
      expect(plates.has(JSON.stringify(plate))).toBe(false)
    }
    expect(seen.every(({ id }) => id % 2 === 1)).toBe(true)
  })

  // Of 120 draws with chances of 1/4 and 1/5, four standard deviations to either side.
  it('[property] are sound in a quarter and have two troubles in a fifth', () => {
    const count = (n: number) => seen.filter(({ truth }) => truth.troubles.length === n).length
    expect(Math.abs(count(0) - 30)).toBeLessThan(19)
    expect(Math.abs(count(2) - 24)).toBeLessThan(18)
  })

  it('[property] are charged right within 4 % unless charge is the trouble, and then off by 10 % to 40 %', () => {
    for (const { truth } of seen) {
      const isCharge = truth.troubles.some(({ kind }) => kind === 'short-of-charge' || kind === 'overcharged')
      const off = Math.abs(truth.chargeError)
      if (isCharge) expect(off > 0.0999 && off < 0.4001).toBe(true)
      else expect(off).toBeLessThan(0.0401)
    }
  })

  it('[property] lack some readings but never those that every visit takes', () => {
    const often = (key: keyof Case['readings']) =>
      seen.filter(({ readings }) => readings[key] !== undefined).length / seen.length
    for (const key of ['outdoor_K', 'returnWetBulb_K', 'suctionPressure_Pa', 'suctionLine_K'] as const)
      expect(often(key)).toBe(1)
    // 70 % of 120, four standard deviations to either side.
    for (const key of ['dischargeLine_K', 'supplyAir_K', 'power_W', 'drierOutlet_K'] as const)
      expect(Math.abs(often(key) - 0.7)).toBeLessThan(0.17)
    expect(often('standstill')).toBe(0)
  })
})

describe('a drawn plant', () => {
  it('[property] takes refrigerant, tells its charge, and shows more subcooling for it', () => {
    const plant = drawPlant('thermostatic', seeded(5))
    const before = plant.truth().chargeError
    const first = plant.read('everything')!
    plant.weigh(0.2 * plant.right_kg)
    expect(plant.truth().chargeError).toBeCloseTo(before + 0.2, 9)
    const second = plant.read('everything')!
    // A fifth more charge moves the high side far beyond what gauge and clamp scatter.
    expect(second.liquidPressure_Pa!).toBeGreaterThan(first.liquidPressure_Pa!)
    expect(first.standstill).toBeDefined()
  })

  it('[property] reads the same things at every ordinary reading of a visit', () => {
    const plant = drawPlant('fixed-orifice', seeded(8))
    expect(Object.keys(plant.read()!)).toEqual(Object.keys(plant.read()!))
  })

  it('[limit] at rest shows saturation, and above it what gas adds', () => {
    for (const { unit, design } of samples('capillary', 3, 2)) {
      const saturated = unit.fluid.bubblePressure(300)
      expect(atRest(unit, design.right_kg, 300).pressure_Pa).toBeCloseTo(saturated, 3)
      const gassed = atRest({ ...unit, gas_Pa: 50_000 }, design.right_kg, 300).pressure_Pa - saturated
      expect(gassed).toBeGreaterThan(50_000)
      expect(gassed).toBeLessThan(100_000)
    }
  })
})
