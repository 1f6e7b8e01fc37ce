import { COVERAGE, METRIC } from '@chargewright/quantity'
import { type Fact, INSTRUMENT_IDS } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { describedBy, draftOf } from './instrument-draft.ts'
import { instrumentInWords, readInstruments, withInstrument } from './instruments.ts'
import { tryInstrument } from './try-instrument.ts'

const PSI = 6894.757
const gauge = { name: 'demo manifold', class: 1.6, span: '500 psi' }
const reading: Fact = { kind: 'reading', what: 'suction-pressure', value: '118 psig' }

describe('my instruments', () => {
  test('[property] go with the readings of their kind, and with no others', () => {
    const mine = { 'low-side-gauge': gauge, 'charging-scale': { resolution: '0.1 oz' } }
    expect(withInstrument(reading, mine)).toEqual({ ...reading, instrument: gauge })
    const other: Fact = { ...reading, what: 'liquid-pressure' }
    expect(withInstrument(other, mine)).toBe(other)
    const named: Fact = { ...reading, instrument: { name: 'another one' } }
    expect(withInstrument(named, mine)).toBe(named)
    const note: Fact = { kind: 'note', text: 'none' }
    expect(withInstrument(note, mine)).toBe(note)
  })

  // COMPUTED by hand: a class of 1.6 on 500 psi is 8 psi at most; as a rectangle (JCGM 100:2008, 4.3.7) u is 8/√3 psi.
  test('[property] a usual reading shows what an instrument is worth', () => {
    const tried = tryInstrument('low-side-gauge', gauge)
    expect(tried.ok && (COVERAGE * tried.value.u!) / PSI).toBeCloseTo((2 * 8) / Math.sqrt(3), 4)
  })

  test.each(INSTRUMENT_IDS)('[property] a plain %s reads a usual value with an uncertainty', (id) => {
    const tried = tryInstrument(id, undefined)
    expect(tried.ok && tried.value.u).toBeGreaterThan(0)
  })

  test('[limit] a description that cannot be used is told by its field', () => {
    expect(tryInstrument('low-side-gauge', { class: 1 })).toMatchObject({ error: expect.stringContaining('span') })
    expect(tryInstrument('pipe-thermometer', { accuracy: 'good' })).toMatchObject({
      error: expect.stringContaining('accuracy of the instrument: cannot read “good”'),
    })
  })

  test('[property] a description goes through the form and through the device unchanged', () => {
    const whole = { ...gauge, accuracy: '0.5 psi', resolution: '0.1 psi' }
    expect(describedBy(draftOf(whole), ['pressure difference'], METRIC)).toEqual(whole)
    expect(describedBy(draftOf(undefined), ['pressure difference'], METRIC)).toEqual({})
    const kept = { 'low-side-gauge': whole, crystal: { name: 'ball' }, voltmeter: { class: 99 } }
    expect(readInstruments(JSON.parse(JSON.stringify(kept)))).toEqual({ 'low-side-gauge': whole })
    expect(instrumentInWords(whole)).toBe('demo manifold, ± 0.5 psi, class 1.6, span 500 psi, steps of 0.1 psi')
  })
})
