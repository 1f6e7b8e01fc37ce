import { evidence, INCH_POUND, METRIC, quantity, render, say, type UnitPreference } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { example } from '../../../examples/example-visits.ts'
import { pdfText } from '../../../scripts/pdf-text.ts'
import { type Check, recordCsv, recordJson, renderPdf, serviceRecord } from '../src/index.ts'
import { definitionText } from './definition-text.ts'

const { visit, assessment } = example('orifice-add')
const vacuum = quantity('absolute pressure', 40)

const evacuation = (preference: UnitPreference): Check => ({
  title: say`Evacuation`,
  verdict: say`held`,
  sentence: say`At most ${vacuum}`,
  reasons: [evidence(say`Not above ${vacuum}`, 'a specification', [evidence(say`From ${vacuum}`)])],
  at: '2026-06-02T08:10:00Z',
  units: { ...preference, 'absolute pressure': preference === METRIC ? 'Pa a' : 'micron' },
})
const standing: Check = {
  title: say`Standing pressure test`,
  verdict: say`no leak seen`,
  sentence: say`Read ${quantity('absolute pressure', 2e6)}`,
  reasons: [],
}
const withChecks = (preference: UnitPreference, checks: readonly Check[] = [standing, evacuation(preference)]) => ({
  preference,
  created: '2026-07-01T12:00:00Z',
  checks,
})

test('[property] the PDF has a section of them, each in the units that show it', async () => {
  const definition = serviceRecord(visit, assessment, withChecks(INCH_POUND))
  const said =
    'Checks\nStanding pressure test: no leak seen\nRead 290.1 psia\n' +
    'Evacuation: held · 2026-06-02 08:10\nAt most 300 micron\nNot above 300 micron'
  expect(definitionText(definition.content)).toContain(said)
  const letters = (text: string) => text.replace(/\s/g, '')
  expect(letters(pdfText(await renderPdf(definition)).join(''))).toContain(letters(said))
  expect(definitionText(serviceRecord(visit, assessment, withChecks(METRIC)).content)).toContain('At most 40 Pa')
})

test('[property] the table has a line for each check and for each reason, with its source', () => {
  const lines = recordCsv(visit, assessment, withChecks(INCH_POUND)).split('\r\n')
  expect(lines.filter((line) => line.startsWith('check'))).toEqual([
    'check,Standing pressure test,,no leak seen,,,,,Read 290.1 psia,',
    'check,Evacuation,,held,,,,2026-06-02T08:10:00Z,At most 300 micron,',
    'check reason,Evacuation,,Not above 300 micron,,,,,a specification,',
    'check reason,Evacuation,,From 300 micron,,,,,,',
  ])
})

test('[property] the data have them, with the numbers of their sources', () => {
  const { checks, sources } = JSON.parse(recordJson(visit, assessment, withChecks(INCH_POUND)))
  expect(checks).toEqual([
    { title: 'Standing pressure test', verdict: 'no leak seen', sentence: 'Read 290.1 psia', reasons: [] },
    {
      title: 'Evacuation',
      verdict: 'held',
      sentence: 'At most 300 micron',
      reasons: [
        { depth: 0, text: 'Not above 300 micron', source: sources.indexOf('a specification') + 1 },
        { depth: 1, text: 'From 300 micron' },
      ],
      at: '2026-06-02T08:10:00Z',
    },
  ])
  expect(sources).toContain('a specification')
})

test('[limit] without any, the record is what it is without the word', () => {
  const { checks: _, ...options } = withChecks(INCH_POUND)
  const none = { ...options, checks: [] }
  expect(recordJson(visit, assessment, none)).toBe(recordJson(visit, assessment, options))
  expect(JSON.parse(recordJson(visit, assessment, none))).not.toHaveProperty('checks')
  expect(recordCsv(visit, assessment, none)).not.toMatch(/^check/m)
  expect(definitionText(serviceRecord(visit, assessment, none).content)).not.toMatch(/^Checks$/m)
})

test.each([1, 2])('[limit] more reasons than a page has room for are all printed, of %i checks', async (count) => {
  const checks = Array.from({ length: count }, (_, nth) => ({
    ...standing,
    reasons: Array.from({ length: 150 }, (_, i) => evidence(say`reason ${i + 1} of check ${nth + 1}.`)),
  }))
  const text = pdfText(await renderPdf(serviceRecord(visit, assessment, withChecks(METRIC, checks))))
  const letters = text.join('').replace(/\s/g, '')
  const lost = checks
    .flatMap(({ reasons }) => reasons.map(({ statement }) => render(statement, METRIC).replace(/\s/g, '')))
    .filter((reason) => !letters.includes(reason))
  expect(lost).toEqual([])
})
