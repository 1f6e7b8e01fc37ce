import { quantity } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boreArea_m2, COPPER_TUBES, copperTube, measuredTube } from './copper-tube.ts'

const INCH = 0.0254

// ASTM B280-20, table 1, and the same table at an engineering reference site. Diameters READ there; bore areas COMPUTED
// from them, within 0.001 in² of the printed ones, which is the rounding of the print.
const B280 = [
  ['1/4', 'annealed', 0.02835],
  ['5/16', 'annealed', 0.04831],
  ['3/8', 'annealed', 0.07596],
  ['3/8', 'drawn', 0.07793],
  ['1/2', 'annealed', 0.1493],
  ['1/2', 'drawn', 0.14522],
  ['5/8', 'annealed', 0.24192],
  ['5/8', 'drawn', 0.23328],
  ['3/4', 'annealed', 0.36317],
  ['3/4', 'drawn', 0.34837],
  ['7/8', 'annealed', 0.48398],
  ['1-1/8', 'drawn', 0.82516],
  ['1-3/8', 'drawn', 1.25681],
  ['1-5/8', 'drawn', 1.77895],
  ['2-1/8', 'drawn', 3.09465],
] as const

describe('copper tube', () => {
  test.each(B280)('[published] %s in, %s, has a bore of %s in²', (nominal, temper, area_in2) => {
    const tube = copperTube(nominal, temper)
    expect(tube.ok && boreArea_m2(tube.value) / INCH ** 2).toBeCloseTo(area_in2, 4)
  })

  test('[published] walls as the excerpt of the standard prints them for drawn tube', () => {
    const walls = { '3/8': 0.03, '1/2': 0.035, '5/8': 0.04, '3/4': 0.042, '7/8': 0.045, '1-1/8': 0.05, '1-3/8': 0.055 }
    for (const [nominal, wall] of Object.entries({ ...walls, '1-5/8': 0.06, '2-1/8': 0.07 })) {
      const tube = copperTube(nominal, 'drawn')
      expect(tube.ok && (tube.value.outside_in - tube.value.inside_in) / 2).toBeCloseTo(wall, 6)
    }
  })

  test('[property] a measured tube of the same diameters has the same bore', () => {
    for (const tube of COPPER_TUBES) {
      const wall = (tube.outside_in - tube.inside_in) / 2
      const measured = measuredTube(quantity('length', tube.outside_in * INCH), quantity('length', wall * INCH))
      expect(measured.ok && boreArea_m2(measured.value)).toBeCloseTo(boreArea_m2(tube), 12)
    }
  })

  test('[limit] however the size is spaced it is found; a size that is not made is refused with those that are', () => {
    expect(copperTube(' 1 1/8" ', 'drawn')).toEqual(copperTube('1-1/8', 'drawn'))
    const unknown = copperTube('1/4', 'drawn')
    expect(!unknown.ok && unknown.error).toMatchObject({ kind: 'unknown', value: '1/4' })
  })

  test('[limit] no text and no number throws, and what is measured is a tube or a problem', () => {
    fc.assert(
      fc.property(fc.string(), fc.double(), fc.double(), (text, outside, wall) => {
        copperTube(text, 'annealed')
        const tube = measuredTube(quantity('length', outside), quantity('length', wall))
        expect(tube.ok ? boreArea_m2(tube.value) >= 0 : tube.error.kind === 'out-of-range').toBe(true)
      }),
      { seed: 8, numRuns: 500 },
    )
  })
})
