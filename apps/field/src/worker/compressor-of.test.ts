import { readFileSync } from 'node:fs'
import { INCH_POUND, inEnglish } from '@chargewright/quantity'
import type { Fact, SystemStatement } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { compressorOf } from './compressor-of.ts'

const at = '2026-06-03T13:00:00Z'
const compressorRating = readFileSync(
  new URL('../../../../examples/service/compressor-coefficients.csv', import.meta.url),
  'utf8',
)
const read = (what: Extract<Fact, { readonly kind: 'reading' }>['what'], value: string): Fact => ({
  kind: 'reading',
  what,
  value,
})
const visit = (facts: SystemStatement, ...others: readonly Fact[]) => ({
  id: 'v',
  events: [{ kind: 'system-described', facts } as const, ...others].map((fact, i) => ({ id: `e${i}`, at, ...fact })),
})
const facts: SystemStatement = { refrigerant: 'R-410A', compressorRating }
// R-410A: 130 psig is 45 °F dew, 364 psig 113 °F.
const ports = [
  read('suction-pressure', '130 psig'),
  read('liquid-pressure', '364 psig'),
  read('suction-temperature', '65 °F'),
]
const found = (of: ReturnType<typeof visit>) => compressorOf(of, INCH_POUND, 'phone', inEnglish)
const judged = (...others: readonly Fact[]) => {
  const { rating } = found(visit(facts, ...ports, read('supply-voltage', '230 V'), ...others))
  if (!rating?.ok) throw new Error(JSON.stringify(rating))
  return rating.value
}

test('[property] what a sound compressor would show is told, and half of it is below the band', () => {
  const { expected, judged: none } = judged()
  expect(none).toEqual([])
  const power = expected.find(({ rating }) => rating.what === 'power')!.rating.si
  const at = (share: number) => judged(read('compressor-power', `${Math.round(power * share)} W`)).judged[0]?.side
  expect([at(0.5), at(1), at(1.5)]).toEqual(['below', 'inside', 'above'])
})

test('[property] power and current are judged and drawn each, and all of it can be copied to the page', () => {
  const both = judged(read('compressor-power', '2300 W'), read('compressor-current', '11 A'))
  expect(both.judged).toHaveLength(2)
  expect(both.pictures.map(({ title }) => title)).toEqual([
    'Compressor power against its maker’s figures',
    'Compressor current against its maker’s figures',
  ])
  expect(both.pictures[0]?.svg).toContain('2300 ± 83 W')
  expect(structuredClone(both)).toEqual(both)
})

test('[limit] without figures nothing is said; without a pressure, or with a text that is no rating, it says why', () => {
  expect(found(visit({ refrigerant: 'R-410A' }, ...ports))).toEqual({})
  const problem = (...given: Parameters<typeof visit>) => {
    const { rating } = found(visit(...given))
    return rating?.ok === false ? rating.error.field : undefined
  }
  expect(problem(facts, ports[0]!)).toBe('Liquid pressure')
  expect(problem({ ...facts, compressorRating: 'none' }, ...ports)).toBe('first cell of the heading')
})

test('[property] three phases are judged by their unbalance', () => {
  const supply = (...voltages: string[]) =>
    found(visit({}, { kind: 'supply-measured', voltages, nominal: '460 V' })).supply
  expect(supply('462 V', '463 V', '461 V')).toMatchObject({ ok: true, value: { kind: 'sound' } })
  expect(supply('480 V', '440 V', '460 V')).toMatchObject({ ok: true, value: { kind: 'doubtful' } })
  expect(supply('500 V', '420 V', '460 V')).toMatchObject({ ok: true, value: { kind: 'stop' } })
  expect(supply('462 V', '463 V')).toMatchObject({ ok: false })
})
