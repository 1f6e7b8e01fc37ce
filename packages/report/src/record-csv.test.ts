import { INCH_POUND } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { EXAMPLES, example, exampleWith } from '../../../examples/example-visits.ts'
import { recordCsv } from './record-csv.ts'

const options = { preference: INCH_POUND, created: '2026-07-01T12:00:00Z' }

/** Reads a table back as RFC 4180 has it. */
function parsed(csv: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]]
  for (const [, quoted, plain = '', end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    rows.at(-1)!.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'))
    if (end === '\r\n') rows.push([])
  }
  return rows.slice(0, -1)
}

test('[property] every line of every example has every column', () => {
  for (const { visit, assessment } of EXAMPLES) {
    const rows = parsed(recordCsv(visit, assessment, options))
    expect(rows.length).toBeGreaterThan(10)
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([10]))
  }
})

test('[property] a reading comes back as typed, as read, as converted and in SI', () => {
  const { visit, assessment } = example('orifice-add')
  const row = parsed(recordCsv(visit, assessment, options)).find(([, item]) => item === 'Suction line')!
  expect(row.slice(0, 5)).toEqual(['reading', 'Suction line', '63 °F', '63.0 ± 1.1 °F', '17.2 °C'])
  expect(Number(row[5])).toBeCloseTo((63 + 459.67) / 1.8, 9)
  expect(row[7]).toBe('2026-06-02T09:30:00Z')
  expect(row[9]).toBe('suction-temperature')
})

test('[limit] quotes, commas and line ends survive, and a formula stays a text', () => {
  const text = '=HYPERLINK("x"), a\r\nb'
  const { visit, assessment } = exampleWith('orifice-add', { kind: 'system-described', facts: { name: text } })
  const rows = parsed(recordCsv(visit, assessment, options))
  expect(rows.find(([section, item]) => section === 'system' && item === 'Name')?.[3]).toBe(`'${text}`)
  const cold = exampleWith('orifice-add', { kind: 'reading', what: 'suction-temperature', value: '-3 °C' })
  expect(recordCsv(cold.visit, cold.assessment, options)).toContain(',-3 °C,')
})
