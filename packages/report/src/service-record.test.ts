import { INCH_POUND, METRIC, render } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { EXAMPLES, type Example, example, exampleWith, visitOf } from '../../../examples/example-visits.ts'
import { definitionText } from '../test/definition-text.ts'
import { printable } from './pdf/printable.ts'
import { serviceRecord } from './service-record.ts'

const CREATED = '2026-07-01T12:00:00Z'
const words = ({ visit, assessment }: Example, preference = INCH_POUND) =>
  definitionText(serviceRecord(visit, assessment, { preference, created: CREATED }).content)

describe('a record of every example', () => {
  test.each(EXAMPLES.map((each) => [each.name, each] as const))(
    '[property] %s: finding, readings as typed, cautions, conditions and the lines to sign',
    (_, each) => {
      for (const preference of [INCH_POUND, METRIC]) {
        const text = words(each, preference)
        const { finding, cautions, conditions, lookAlikes } = each.assessment
        const said = [
          finding.sentence,
          ...finding.steps,
          ...finding.reasons.map(({ statement }) => statement),
          ...cautions.map(({ statement }) => statement),
          ...conditions.map(({ evidence }) => evidence.statement),
          ...lookAlikes.map(({ label }) => label),
        ]
        for (const statement of said) expect(text).toContain(printable(render(statement, preference)))
        for (const reading of Object.values(each.visit.readings)) expect(text).toContain(`${reading.typed}\n`)
        expect(text).toContain('Readings are as typed by the technician')
        expect(text).toContain('Technician\nFor the owner\nDate\n')
      }
    },
  )
})

test('[property] it is plain data, and the same for the same arguments', () => {
  const { visit, assessment } = example('step-by-step')
  const options = { preference: METRIC, created: CREATED, about: 'Invented.' }
  const definition = serviceRecord(visit, assessment, options)
  expect(JSON.parse(JSON.stringify(definition))).toEqual(definition)
  expect(serviceRecord(visit, assessment, options)).toEqual(definition)
})

test('[property] paper follows the units unless it is chosen', () => {
  const { visit, assessment } = example('orifice-hold')
  const paper = (preference: typeof METRIC, chosen?: 'A4') =>
    serviceRecord(visit, assessment, { preference, created: CREATED, ...(chosen ? { paper: chosen } : {}) }).pageSize
  expect([paper(INCH_POUND), paper(METRIC), paper(INCH_POUND, 'A4')]).toEqual(['LETTER', 'A4', 'A4'])
})

test('[property] corrections, problems and doubts stand in the record', () => {
  const text = words(
    exampleWith(
      'step-by-step',
      { kind: 'reading', what: 'supply-air-dry-bulb', value: 'cold' },
      { kind: 'reading', what: 'condenser-leaving-air', value: '250 °F' },
    ),
  )
  expect(text).toContain('Suction line “36 °F” was corrected: Suction line “63 °F” (two digits changed places)')
  expect(text).toContain('Not used: Supply air, dry bulb: cannot read “cold”')
  expect(text).toContain('Used, and questioned: Air leaving condenser: 250 °F')
  expect(text).toContain('questioned: Air leaving condenser')
})

test('[property] earlier readings and every weighed move are told', () => {
  const text = words(example('step-by-step'))
  expect(text).toContain('before: 110 psig at 09:30, 118 psig at 10:00')
  expect(text).toContain('5 oz\n5.0 ± 0.1 oz\nvapour, suction port, compressor running\ndemo cylinder 7 (R-410A)\n')
  expect(text).toContain('11.0 ± 0.2 oz')
})

test('[limit] an empty visit still makes a record, with what is to be entered first', () => {
  const text = words(visitOf())
  expect(text).toContain('System without a name')
  expect(text).toContain('nothing entered yet')
  expect(text).toContain('What would tell more\n1. Refrigerant: ')
  expect(text).not.toContain('Sources')
})

test('[limit] a long text is cut on paper and says where it is whole', () => {
  const text = words(exampleWith('orifice-add', { kind: 'note', text: 'word '.repeat(1900) }))
  expect(text).toContain('… (whole text in the data export)')
  expect(text.length).toBeLessThan(8000)
})
