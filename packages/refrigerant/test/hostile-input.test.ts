import { describeProblem, kelvin, pascal } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  blend,
  findRefrigerant,
  refrigerantFacts,
  saturationAtPressure,
  saturationAtTemperature,
  stateAt,
  stateAtQuality,
} from '../src/index.ts'
import { everyRefrigerant } from './computed.ts'

const refrigerants = everyRefrigerant()
const anyRefrigerant = fc.constantFrom(...refrigerants)
const anyNumber = fc.oneof(
  fc.double(),
  fc.constantFrom(
    0,
    -0,
    1,
    -1,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.MIN_VALUE,
    Number.MAX_VALUE,
  ),
)
const anyPressure = fc.oneof(anyNumber, fc.double({ min: 1e-6, max: 2e7, noNaN: true }))
const anyTemperature = fc.oneof(anyNumber, fc.double({ min: 150, max: 450, noNaN: true }))
const RUNS = { numRuns: 10_000, seed: 20_261_125 }

/** Either a problem that can be told, or numbers all the way down. */
function soundOrTold(result: { readonly ok: boolean; readonly value?: unknown; readonly error?: unknown }): void {
  if (!result.ok) {
    const sentence = describeProblem(result.error as Parameters<typeof describeProblem>[0])
    if (sentence.length < 10) throw new Error(`says too little: ${sentence}`)
  } else if (!finite(result.value)) throw new Error(`not finite: ${JSON.stringify(result.value)}`)
}

function finite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value)
  return typeof value !== 'object' || value === null || Object.values(value).every(finite)
}

describe('hostile input', () => {
  it('[limit] 10,000 states of anything at any pressure and temperature: no NaN, no throw, no endless loop', () => {
    let solved = 0
    fc.assert(
      fc.property(anyRefrigerant, anyPressure, anyTemperature, (refrigerant, p, T) => {
        const state = stateAt(refrigerant, pascal(p), kelvin(T))
        soundOrTold(state)
        if (state.ok) solved++
      }),
      RUNS,
    )
    expect(solved).toBeGreaterThan(1_000)
  })

  it('[limit] 10,000 saturation and quality questions: no NaN, no throw, no endless loop', () => {
    fc.assert(
      fc.property(
        anyRefrigerant,
        anyPressure,
        anyTemperature,
        fc.oneof(anyNumber, fc.double({ min: 0, max: 1 })),
        (refrigerant, p, T, q) => {
          soundOrTold(saturationAtPressure(refrigerant, pascal(p)))
          soundOrTold(saturationAtTemperature(refrigerant, kelvin(T)))
          soundOrTold(stateAtQuality(refrigerant, pascal(p), q))
        },
      ),
      RUNS,
    )
  })

  it('[limit] within the stated ranges there is always an answer by temperature and by pressure', () => {
    fc.assert(
      fc.property(anyRefrigerant, fc.double({ min: 0, max: 1, noNaN: true }), (refrigerant, share) => {
        const { minTemperature_K, maxTemperature_K, minPressure_Pa, maxPressure_Pa } =
          refrigerant.engine.limits.saturation
        const T = minTemperature_K + share * (maxTemperature_K - minTemperature_K)
        const p = minPressure_Pa * (maxPressure_Pa / minPressure_Pa) ** share
        expect(saturationAtTemperature(refrigerant, kelvin(Math.min(T, maxTemperature_K))).ok).toBe(true)
        expect(saturationAtPressure(refrigerant, pascal(Math.min(p, maxPressure_Pa))).ok).toBe(true)
      }),
      RUNS,
    )
  })

  it('[limit] any name and any recipe: a refrigerant or a problem', () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.dictionary(fc.constantFrom('R-32', 'R-125', 'propane', 'R-601a', 'nothing'), anyNumber),
        (name, recipe) => {
          soundOrTold({ ...findRefrigerant(name), value: 0 })
          soundOrTold({ ...refrigerantFacts(name), value: 0 })
          soundOrTold({ ...blend(recipe), value: 0 })
        },
      ),
      { ...RUNS, numRuns: 2_000 },
    )
  })
})
