import { TWIN_VERSION } from '@chargewright/cycle'
import { describe, expect, it, test } from 'vitest'
import { OBSERVABLE_NAMES, SHIPPED_CALIBRATION } from '../src/index.ts'
import { type Device, diagnosed, reading } from './sample.ts'

const DEVICES: readonly Device[] = ['fixed-orifice', 'capillary', 'thermostatic']

describe('the shipped calibration', () => {
  it('[property] is made for the twin that is shipped with it', () => {
    expect(SHIPPED_CALIBRATION.twin).toBe(TWIN_VERSION)
  })

  test.each(DEVICES)('[property] knows every observable of a %s, from at least fifty sound systems', (device) => {
    const { offset, discrepancy, learntFrom } = SHIPPED_CALIBRATION.devices[device]
    expect(learntFrom).toBeGreaterThanOrEqual(50)
    for (const name of OBSERVABLE_NAMES) {
      expect(Number.isFinite(offset[name]), name).toBe(true)
      expect(discrepancy[name], name).toBeGreaterThan(0)
    }
  })

  // A change of the twin that moves these needs a new version and a new calibration.
  test.each([
    ['fixed-orifice', '968.7 2539.1 285.2 309.3'],
    ['capillary', '965.3 2537.5 286.0 309.2'],
    ['thermostatic', '964.4 2537.1 284.8 309.2'],
  ] as const)('[pinned] version 1 of the twin reads a sound %s so', (device, expected) => {
    const { suctionPressure_Pa: low, liquidPressure_Pa: high, suctionLine_K, liquidLine_K } = reading(device, {})
    expect([low! / 1e3, high! / 1e3, suctionLine_K!, liquidLine_K!].map((v) => v.toFixed(1)).join(' ')).toBe(expected)
  })

  it('[property] still names a clear case', () => {
    const short = diagnosed('fixed-orifice', reading('fixed-orifice', { 'short-of-charge': -0.35 }), {
      calibration: SHIPPED_CALIBRATION,
    })
    expect(short.singles[0]!.cause).toBe('short-of-charge')
  })
})
