import { conditions, type Observation } from '@chargewright/cycle'
import { describe, expect, test } from 'vitest'
import { asTwinReads, SHIPPED_CALIBRATION, targetAsTwinReads } from './index.ts'

const at = conditions(308, 300, 292)
if (!at.ok) throw new Error('no such weather')
const calibration = SHIPPED_CALIBRATION.devices['fixed-orifice']
const read = (superheat: number, supply = 286): Observation => ({
  conditions: at.value,
  added_kg: 0.1,
  readings: { superheat_K: { value: superheat, sd: 0.5 }, supplyAir_K: { value: supply, sd: 0.4 } },
})
const superheatOf = (observation: Observation) => observation.readings.superheat_K!.value

describe('readings as the twin would have had them', () => {
  const corrected = asTwinReads(read(12), calibration)

  test('[property] lack what it reads too low, and nothing else is touched', () => {
    expect(superheatOf(corrected)).toBeCloseTo(12 - calibration.offset.superheat, 12)
    expect(corrected.readings.supplyAir_K!.value).toBeCloseTo(286 + calibration.offset.supplyAirDrop, 12)
    expect(corrected.readings.superheat_K!.sd).toBe(0.5)
    expect(corrected).toMatchObject({ added_kg: 0.1, conditions: at.value })
    expect(Object.keys(corrected.readings)).toEqual(['superheat_K', 'supplyAir_K'])
  })

  test('[limit] at saturation there is nothing to correct, and drier readings never change places', () => {
    expect(superheatOf(asTwinReads(read(0), calibration))).toBe(0)
    const values = Array.from({ length: 60 }, (_, i) => superheatOf(asTwinReads(read(i / 10), calibration)))
    expect(values).toEqual(values.toSorted((a, b) => a - b))
  })

  test('[property] a target is moved like the reading that is to reach it, a weight is not', () => {
    const target = targetAsTwinReads({ kind: 'superheat', value_K: 12, sd_K: 1 }, calibration)
    expect(target).toEqual({ kind: 'superheat', value_K: superheatOf(corrected), sd_K: 1 })
    const weight = { kind: 'charge', charge_kg: 2, sd_kg: 0.1 } as const
    expect(targetAsTwinReads(weight, calibration)).toBe(weight)
  })
})
