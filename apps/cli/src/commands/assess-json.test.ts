import { readFileSync } from 'node:fs'
import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { assess } from './assess.ts'
import { assessJson } from './assess-json.ts'

const answer = assess(readFileSync('examples/orifice-add.json', 'utf8'))
if (!answer.ok) throw new Error('the example cannot be read')
const { visit, assessment } = answer.value
const inchPound = assessJson(answer.value, INCH_POUND)

test('[property] the units preferred change the words and no number', () => {
  const numbers = (json: object) => JSON.stringify(json).match(/"[^"]*":-?\d[^,}]*/g)
  const metric = assessJson(answer.value, METRIC)
  expect(metric).not.toEqual(inchPound)
  expect(numbers(metric)).toEqual(numbers(inchPound))
})

test('[property] the interval of a dose that a twin sized stands beside it, around what is to go', () => {
  const { dose } = assessment.finding
  expect(dose?.interval).toBeDefined()
  expect(inchPound).toMatchObject({
    finding: {
      dose: { interval_low_kg: dose?.interval?.low.si, interval_high_kg: dose?.interval?.high.si },
    },
  })
})

test('[property] derived values and the dose stand in SI under keys with their units', () => {
  expect(inchPound).toMatchObject({
    visit: visit.id,
    method: { id: 'superheat' },
    finding: { kind: 'add', dose: { direction: 'into-system', mass_kg: assessment.finding.dose?.mass.si } },
    measures: {
      superheat_K: assessment.measures.superheat?.quantity.si,
      superheat_standard_uncertainty_K: assessment.measures.superheat?.quantity.u,
      evaporating_temperature_K: assessment.measures.evaporatingTemperature?.quantity.si,
      target_superheat_K: assessment.target?.quantity.si,
    },
  })
})

test('[property] the reasons lead down to the events that were typed in', () => {
  const events = [...JSON.stringify(inchPound).matchAll(/"event":"([^"]*)"/g)].map(([, id]) => id)
  const known = visit.log.map((entry) => entry.id)
  expect(events.length).toBeGreaterThan(5)
  expect(events.filter((id) => id === undefined || !known.includes(id))).toEqual([])
})

test('[limit] an empty visit has no method, and says what to enter first', () => {
  const empty = assess('{"format": "chargewright-visit", "version": 1, "id": "empty", "events": []}')
  expect(empty.ok && assessJson(empty.value, METRIC)).toMatchObject({
    method: null,
    finding: { kind: 'cannot-tell', next: [{ kind: 'fact', what: 'refrigerant', label: 'Refrigerant' }] },
  })
})
