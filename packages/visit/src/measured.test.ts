import { describe, expect, test } from 'vitest'
import type { Instrument } from './event.ts'
import { measured } from './measured.ts'
import type { Accuracy } from './plain-instrument.ts'

const PSI = 6894.757293168
const plain: Accuracy = { limit: 3.5 * PSI, fraction: 0.01, source: 'plain gauge' }
const gauge = (instrument?: Instrument) =>
  measured('100 psig', ['gauge pressure', 'absolute pressure'], plain, instrument, 'Suction pressure')

/** Standard uncertainty in psi, and where it comes from. */
function uncertainty(instrument?: Instrument): { readonly u_psi: number; readonly source: string } {
  const read = gauge(instrument)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return { u_psi: read.value.quantity.u! / PSI, source: read.value.uncertaintySource }
}

describe('where the uncertainty comes from', () => {
  const cases: readonly [situation: string, instrument: Instrument | undefined, u_psi: number, source: string][] = [
    [
      'no instrument: limits of a plain one, share included, seldom reached',
      undefined,
      (3.5 + 1) / Math.sqrt(6),
      'plain gauge',
    ],
    ['only a name: the same', { name: 'gauge 2' }, (3.5 + 1) / Math.sqrt(6), 'plain gauge'],
    ['stated accuracy: half of it', { accuracy: '0.5 psi' }, 0.25, 'stated accuracy 0.5 psi'],
    ['written with its sign', { accuracy: '± 0.5 psi' }, 0.25, 'stated accuracy ± 0.5 psi'],
    ['written with its sign in letters', { accuracy: '+/-0.5 psi' }, 0.25, 'stated accuracy +/-0.5 psi'],
    ['written with a minus: its size counts', { accuracy: '-0.5 psi' }, 0.25, 'stated accuracy -0.5 psi'],
    [
      'class 1 of 500 psi: limits ±5 psi, evenly likely inside',
      { class: 1, span: '500 psi' },
      5 / Math.sqrt(3),
      'class 1 gauge, span 500 psi (EN 837-1)',
    ],
    [
      'stated accuracy goes before class',
      { accuracy: '0.5 psi', class: 1, span: '500 psi' },
      0.25,
      'stated accuracy 0.5 psi',
    ],
    [
      'a display step of 1 psi adds 1/√12 psi in quadrature',
      { accuracy: '0.5 psi', resolution: '1 psi' },
      Math.hypot(0.25, 1 / Math.sqrt(12)),
      'stated accuracy 0.5 psi, resolution 1 psi',
    ],
    ['an exact one', { accuracy: '0 psi' }, 0, 'stated accuracy 0 psi'],
  ]
  test.each(cases)('[published] JCGM 100:2008: %s', (_, instrument, u_psi, source) => {
    const found = uncertainty(instrument)
    expect(found.u_psi).toBeCloseTo(u_psi, 9)
    expect(found.source).toBe(source)
  })

  test('[property] an error of a thermometer is a difference: 0.5 °F is 0.28 K and not 255 K', () => {
    const read = measured('40 °F', ['temperature'], plain, { accuracy: '0.5 °F' }, 'Liquid line')
    expect(read.ok && read.value.quantity.u).toBeCloseTo(0.25 * (5 / 9), 9)
  })

  test('[property] the share of a plain instrument goes by the size of the reading, whatever its sign', () => {
    const vacuum = measured('-10 psig', ['gauge pressure'], plain, undefined, 'Suction pressure')
    expect(vacuum.ok && vacuum.value.quantity.u! / PSI).toBeCloseTo((3.5 + 0.1) / Math.sqrt(6), 9)
  })
})

describe('what is wrong with the instrument is said of the instrument', () => {
  test('[limit] a class without its span asks for the span', () => {
    expect(gauge({ class: 1 })).toEqual({
      ok: false,
      error: {
        kind: 'missing',
        field: 'Suction pressure, span of the instrument',
        value: 'nothing',
        accepted: 'the span of the gauge, because its class is given',
      },
    })
  })

  test.each([
    ['accuracy', { accuracy: 'good' }],
    ['span', { class: 1, span: '500 °F' }],
    ['resolution', { resolution: '1' }],
  ])('[limit] an unreadable %s names it', (name, instrument) => {
    const read = gauge(instrument)
    expect(!read.ok && read.error).toMatchObject({
      kind: 'unreadable',
      field: `Suction pressure, ${name} of the instrument`,
    })
  })
})
