import { describe, expect, it } from 'vitest'
import { recalibrate, type SoundVisit } from '../src/index.ts'
import { EXACT, family, reading } from './sample.ts'

/** Sound visits in several weathers, all of them on systems whose subcooling reads 2 K more than the twin's. */
const visits: readonly SoundVisit[] = [24, 28, 32, 36].flatMap((outdoor_C) =>
  [16, 18, 20].map((wetBulb_C) => {
    const set = reading('fixed-orifice', {}, { outdoor_C, returnAir_C: 26, wetBulb_C })
    return {
      family: family('fixed-orifice'),
      sets: [{ readings: { ...set, liquidLine_K: set.liquidLine_K! - 2 }, added_kg: 0 }],
    }
  }),
)

function learnt(weight: number) {
  const found = recalibrate(EXACT, visits, 'learnt', weight)
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

describe('a calibration learnt from sound visits', () => {
  it('[property] knows what the twin reads too low, and leaves what it reads right', () => {
    const { offset, learntFrom } = learnt(0.1).devices['fixed-orifice']
    expect(offset.subcooling).toBeCloseTo(2, 0)
    expect(Math.abs(offset.evaporating)).toBeLessThan(0.2)
    expect(learntFrom).toBe(visits.length)
  })

  it('[property] moves less the more the old one counts', () => {
    const [light, heavy] = [0.1, 100].map((weight) => learnt(weight).devices['fixed-orifice'].offset.subcooling)
    expect(heavy!).toBeGreaterThan(0)
    expect(heavy!).toBeLessThan(0.3 * light!)
  })

  it('[property] leaves the devices that were not visited as they were', () => {
    expect(learnt(1).devices.thermostatic).toEqual(EXACT.devices.thermostatic)
  })

  it('[limit] is not learnt on top of one made for another twin', () => {
    expect(recalibrate({ ...EXACT, twin: 'another' }, visits, 'learnt').ok).toBe(false)
  })
})
