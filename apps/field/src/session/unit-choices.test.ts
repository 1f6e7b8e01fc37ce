import { type Dimension, INCH_POUND, METRIC, preferredUnit } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { CHOSEN_QUANTITIES, choicesOf, choiceThatHolds, readOwnUnits, withOwnUnits } from './unit-choices.ts'

const choices = CHOSEN_QUANTITIES.flatMap((of) => Object.keys(choicesOf(of).choices).map((name) => [of, name] as const))

describe('the unit of each quantity', () => {
  test.each(choices)(
    '[property] %s in %s: the choice holds in both systems, and names units that exist',
    (of, name) => {
      for (const system of [INCH_POUND, METRIC]) {
        const units = withOwnUnits(system, { [of]: name })
        expect(choiceThatHolds(of, units)).toBe(name)
        for (const [dimension, symbol] of Object.entries(choicesOf(of).choices[name]!.units)) {
          const where = dimension === 'vacuum' ? 'gauge pressure' : (dimension as Dimension)
          expect(preferredUnit(where, { [where]: symbol }).symbol).toBe(symbol === 'lb oz' ? 'oz' : symbol)
        }
      }
    },
  )

  test('[property] one choice leaves all others as the system has them', () => {
    const units = withOwnUnits(INCH_POUND, { pressure: 'bar' })
    expect(units).toEqual({ ...INCH_POUND, ...choicesOf('pressure').choices.bar!.units })
    expect(choiceThatHolds('temperature', units)).toBe('°F')
    expect(withOwnUnits(METRIC, {})).toBe(METRIC)
  })

  test('[limit] what a newer or broken version kept is left out', () => {
    expect(readOwnUnits({ pressure: 'furlongs', mass: 'oz', mood: 'good', __proto__: null })).toEqual({ mass: 'oz' })
    expect(readOwnUnits('psi')).toEqual({})
    expect(readOwnUnits(null)).toEqual({})
  })
})
