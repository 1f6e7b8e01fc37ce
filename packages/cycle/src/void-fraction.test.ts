import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tables } from '../test/sample.ts'
import { meanDensity } from './inventory.ts'
import { VOID_FRACTIONS, voidLaw, zivi } from './void-fraction.ts'

const properties = tables('R-22')
const tube = { massFlux: 200, diameter_m: 0.008 }
const saturated = (celsius: number) => properties.saturated(properties.dewPressure(celsius + 273.15))

describe('void fraction', () => {
  // COMPUTED from Zivi's form (READ), four digits.
  it.each([
    [0.05, 0.02, 0.4167],
    [0.2, 0.02, 0.7724],
    [0.1, 0.05, 0.4501],
    [0.5, 0.05, 0.8805],
    [0.3, 0.1, 0.6655],
    [0.9, 0.1, 0.9766],
  ])('[published] Zivi at quality %d and density ratio %d is %d', (quality, ratio, expected) => {
    expect(zivi(ratio)(quality)).toBeCloseTo(expected, 4)
  })

  it.each(VOID_FRACTIONS)(
    '[property] %s rises with quality from 0 to 1 and stays below the homogeneous one',
    (kind) => {
      for (const celsius of [-20, 7, 45]) {
        const at = saturated(celsius)
        const law = voidLaw(kind, at, tube)
        const ratio = at.vapourDensity_kg_m3 / at.liquidDensity_kg_m3
        let before = 0
        for (let x = 0.02; x < 1; x += 0.02) {
          const alpha = law(x)
          expect(alpha).toBeGreaterThanOrEqual(before)
          expect(alpha).toBeLessThanOrEqual(1 / (1 + ((1 - x) / x) * ratio) + 0.01)
          before = alpha
        }
        expect([law(0), law(1)]).toEqual([0, 1])
      }
    },
  )

  it('[published] Hughmark and Baroczy hold more than Zivi does in an evaporator', () => {
    // Rice 1987 (READ): Hughmark, Premoli, Tandon and Baroczy give the highest inventories.
    const at = saturated(7)
    const held = (kind: (typeof VOID_FRACTIONS)[number]) => meanDensity(kind, 0.2, 1, at, tube)
    expect(held('hughmark')).toBeGreaterThan(held('zivi'))
    expect(held('baroczy')).toBeGreaterThan(held('zivi'))
  })
})

describe('mean density of a two-phase stretch', () => {
  it('[property] the rule agrees with the closed form of Zivi', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (from, more) => {
          const to = Math.min(from + more, 1)
          const at = saturated(40)
          const { vapourDensity_kg_m3: rhoG, liquidDensity_kg_m3: rhoF } = at
          const c = (rhoG / rhoF) ** (2 / 3)
          // ∫ x/(x + (1 − x)c) dx = x/(1 − c) − c/(1 − c)² ln(c + (1 − c)x).
          const antiderivative = (x: number) => x / (1 - c) - (c / (1 - c) ** 2) * Math.log(c + (1 - c) * x)
          const alpha = (antiderivative(to) - antiderivative(from)) / (to - from)
          expect(meanDensity('zivi', from, to, at, tube) / (rhoF + alpha * (rhoG - rhoF))).toBeCloseTo(1, 3)
        },
      ),
      { seed: 5, numRuns: 200 },
    )
  })

  it('[limit] a stretch of no length has the density at its quality, in either direction', () => {
    const at = saturated(40)
    expect(meanDensity('baroczy', 1, 1, at, tube)).toBeCloseTo(at.vapourDensity_kg_m3, 6)
    expect(meanDensity('baroczy', 0, 0, at, tube)).toBeCloseTo(at.liquidDensity_kg_m3, 6)
    expect(meanDensity('baroczy', 0.2, 0.9, at, tube)).toBeCloseTo(meanDensity('baroczy', 0.9, 0.2, at, tube), 8)
  })
})
