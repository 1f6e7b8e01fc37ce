import { type Problem, quantity, type Result } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { liquidAt } from './contents.ts'
import { floodedFraction, floodingCharge } from './flooding-charge.ts'

const given = <T>(result: Result<T, Problem>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}
const fahrenheit = (t: number) => quantity('temperature', (t + 459.67) * (5 / 9))
const condenser = (design_F: number, held_F: number, ambient_F: number) => ({
  designDifference: quantity('temperature difference', design_F * (5 / 9)),
  heldCondensing: fahrenheit(held_F),
  lowestAmbient: fahrenheit(ambient_F),
})

// The formula evaluated, COMPUTED: design difference, then for 90, 95, 100, 105 °F held the fraction at 60, 40, 20, 0,
// −20 °F. Printed to four digits.
const TABLE: readonly (readonly [design_F: number, rows: readonly (readonly number[])[]])[] = [
  [
    10,
    [
      [0.6667, 0.8, 0.8571, 0.8889, 0.9091],
      [0.7143, 0.8182, 0.8667, 0.8947, 0.913],
      [0.75, 0.8333, 0.875, 0.9, 0.9167],
      [0.7778, 0.8462, 0.8824, 0.9048, 0.92],
    ],
  ],
  [
    15,
    [
      [0.5, 0.7, 0.7857, 0.8333, 0.8636],
      [0.5714, 0.7273, 0.8, 0.8421, 0.8696],
      [0.625, 0.75, 0.8125, 0.85, 0.875],
      [0.6667, 0.7692, 0.8235, 0.8571, 0.88],
    ],
  ],
  [
    20,
    [
      [0.3333, 0.6, 0.7143, 0.7778, 0.8182],
      [0.4286, 0.6364, 0.7333, 0.7895, 0.8261],
      [0.5, 0.6667, 0.75, 0.8, 0.8333],
      [0.5556, 0.6923, 0.7647, 0.8095, 0.84],
    ],
  ],
  [
    25,
    [
      [0.1667, 0.5, 0.6429, 0.7222, 0.7727],
      [0.2857, 0.5455, 0.6667, 0.7368, 0.7826],
      [0.375, 0.5833, 0.6875, 0.75, 0.7917],
      [0.4444, 0.6154, 0.7059, 0.7619, 0.8],
    ],
  ],
  [
    30,
    [
      [0, 0.4, 0.5714, 0.6667, 0.7273],
      [0.1429, 0.4545, 0.6, 0.6842, 0.7391],
      [0.25, 0.5, 0.625, 0.7, 0.75],
      [0.3333, 0.5385, 0.6471, 0.7143, 0.76],
    ],
  ],
]
const HELD_F = [90, 95, 100, 105]
const AMBIENT_F = [60, 40, 20, 0, -20]

describe('flooded fraction', () => {
  test.each(TABLE)('[published] the table for a design difference of %s °F', (design_F, rows) => {
    const computed = HELD_F.map((held) =>
      AMBIENT_F.map((air) => given(floodedFraction(condenser(design_F, held, air)))),
    )
    expect(computed.flat().map((fraction) => Math.round(fraction * 1e4) / 1e4)).toEqual(rows.flat())
  })

  // A trade discussion, READ: the difference doubles, flood half; it triples, flood two thirds. Its example of 90 °F
  // held at 0 °F with 15 °F of design difference is 83.3 % by the formula.
  test('[published] twice the difference floods half, three times two thirds, 90 °F at 0 °F with 15 °F 83.3 %', () => {
    expect(given(floodedFraction(condenser(15, 90, 60)))).toBeCloseTo(1 / 2, 12)
    expect(given(floodedFraction(condenser(15, 90, 45)))).toBeCloseTo(2 / 3, 12)
    expect(given(floodedFraction(condenser(15, 90, 0)))).toBeCloseTo(0.833, 3)
  })

  test('[property] from 0 to below 1, less in warmer air, none once the air is warm enough', () => {
    const temperature = fc.double({ min: -40, max: 130, noNaN: true })
    fc.assert(
      fc.property(fc.double({ min: 1, max: 60, noNaN: true }), temperature, temperature, (design, held, air) => {
        const fraction = given(floodedFraction(condenser(design, held, air)))
        expect(fraction >= 0 && fraction < 1).toBe(true)
        expect(given(floodedFraction(condenser(design, held, air + 1)))).toBeLessThanOrEqual(fraction)
        if (held - air <= design) expect(fraction).toBeLessThan(1e-12)
      }),
      { seed: 9, numRuns: 2000 },
    )
  })
})

describe('flooding charge', () => {
  const r404a = given(findRefrigerant('R-404A'))
  const volume = quantity('volume', 0.004)

  test('[property] a little less than the flooded volume full of cold liquid, by the vapour it displaces', () => {
    const { quantity: mass } = given(floodingCharge(r404a, { volume, ...condenser(15, 90, 0) }))
    const full = 0.004 * (1 - 15 / 90) * given(liquidAt(r404a, fahrenheit(0))).density_kg_m3
    expect(mass.si).toBeLessThan(full)
    expect(mass.si).toBeGreaterThan(0.9 * full)
    expect(mass.u! / mass.si).toBeCloseTo(0.1 / Math.sqrt(3), 9)
  })

  test('[limit] no charge in warm air, and no condenser of negative or unknown volume', () => {
    expect(given(floodingCharge(r404a, { volume, ...condenser(15, 90, 80) })).quantity.si).toBe(0)
    for (const si of [-1, Number.NaN]) {
      const refused = floodingCharge(r404a, { volume: quantity('volume', si), ...condenser(15, 90, 0) })
      expect(!refused.ok && refused.error.field).toBe('condenser, inside volume')
    }
  })

  test('[limit] a condensing temperature beyond the critical point is a problem', () => {
    expect(floodingCharge(r404a, { volume, ...condenser(15, 190, 0) }).ok).toBe(false)
    expect(floodedFraction(condenser(0, 90, 0)).ok).toBe(false)
  })
})
