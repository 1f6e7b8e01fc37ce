import { METRIC } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { example, exampleWith } from '../../../examples/example-visits.ts'
import { recordJson } from './record-json.ts'

const options = { preference: METRIC, created: '2026-07-01T12:00:00Z' }

test('[property] the data carry the finding, its reasons, and every value as typed and in SI', () => {
  const { visit, assessment } = example('orifice-add')
  const record = JSON.parse(recordJson(visit, assessment, options))
  expect(record).toMatchObject({ format: 'chargewright-record', version: 1, rules: assessment.version })
  expect(record.finding).toMatchObject({
    kind: 'add',
    word: 'add',
    sentence: expect.stringMatching(/^Add \d+ g, as vapour/),
  })
  const suction = record.readings.find(({ label }: { label: string }) => label === 'Suction line')
  expect(suction).toMatchObject({ typed: '63 °F', quantity: { dimension: 'temperature', shown: '17.2 ± 0.6 °C' } })
  expect(suction.quantity.si).toBeCloseTo((63 + 459.67) / 1.8, 9)
  expect(record.sources[suction.source - 1]).toContain('thermometers')
})

test('[limit] a long text is kept whole', () => {
  const text = 'note '.repeat(1900)
  const { visit, assessment } = exampleWith('orifice-add', { kind: 'note', text })
  expect(recordJson(visit, assessment, options)).toContain(text)
})

test('[property] it says from how many earlier visits the system is known, where it is', () => {
  const { visit, assessment } = example('orifice-add')
  const rows = (learntFrom: number) => JSON.parse(recordJson(visit, assessment, { ...options, learntFrom })).system.rows
  expect(rows(3)).toContainEqual({ what: 'learntFrom', label: 'Visits it is known from', value: '3' })
  expect(rows(0)).toEqual(JSON.parse(recordJson(visit, assessment, options)).system.rows)
})
