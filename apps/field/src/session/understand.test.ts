import { INCH_POUND, METRIC, parse } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { understand } from './understand.ts'

const SUCTION = { label: 'Suction pressure', accepts: ['gauge pressure', 'absolute pressure'] } as const
const MASS = { label: 'Mass', accepts: ['mass'] } as const

describe('understanding what was typed', () => {
  test('[property] a bare number is kept with the unit that stood beside the field', () => {
    expect(understand('118', SUCTION, INCH_POUND)).toMatchObject({ value: { text: '118 psig' } })
    expect(understand(' 8,1 ', SUCTION, METRIC)).toMatchObject({ value: { text: '8,1 bar g' } })
  })

  test('[property] a typed unit wins over the one beside the field', () => {
    expect(understand('8.1 bar', SUCTION, INCH_POUND)).toMatchObject({ value: { text: '8.1 bar' } })
    expect(understand('14 lb 6 oz', MASS, METRIC)).toMatchObject({ value: { text: '14 lb 6 oz' } })
  })

  test('[limit] what can be read in two ways is asked about by the name of the field', () => {
    expect(understand('1,234', MASS, METRIC)).toMatchObject({ error: { kind: 'ambiguous', field: 'Mass' } })
  })

  test('[property] the kept text alone means what was understood, whatever was typed', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.double().map(String)),
        fc.constantFrom(INCH_POUND, METRIC),
        (typed, units) => {
          const understood = understand(typed, SUCTION, units)
          if (!understood.ok) return
          expect(parse(understood.value.text, SUCTION.accepts)).toEqual({ ok: true, value: understood.value.quantity })
        },
      ),
      { seed: 20261125 },
    )
  })
})
