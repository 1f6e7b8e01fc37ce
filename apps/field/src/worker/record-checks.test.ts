import { readFileSync } from 'node:fs'
import { INCH_POUND, render, say } from '@chargewright/quantity'
import type { Fact, SystemStatement, VisitEvent } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { recordChecks } from './record-checks.ts'

const compressorRating = readFileSync(
  new URL('../../../../examples/service/compressor-coefficients.csv', import.meta.url),
  'utf8',
)
type Reading = Extract<Fact, { readonly kind: 'reading' }>
const read = (what: Reading['what'], value: string): Fact => ({ kind: 'reading', what, value })
const added = (mass: string): Fact => ({
  kind: 'refrigerant-moved',
  direction: 'into-system',
  mass,
  phase: 'vapour',
  port: 'suction',
  compressor: 'running',
})
const visit = (facts: SystemStatement, ...others: readonly Fact[]) => ({
  id: 'v',
  events: [{ kind: 'system-described', facts } as const, ...others].map(
    (fact, i): VisitEvent => ({ id: `e${i}`, at: '2026-02-03T10:00:00Z', ...fact }),
  ),
})
const told = (...[of, system]: Parameters<typeof recordChecks>) =>
  recordChecks(of, system).map(({ title, verdict, sentence }) =>
    render(say`${title}: ${verdict}. ${sentence}`, INCH_POUND),
  )

const ports = [read('suction-pressure', '130 psig'), read('liquid-pressure', '364 psig')]
const supply = (...voltages: string[]): Fact => ({ kind: 'supply-measured', voltages, nominal: '460 V' })

test('[property] compressor and supply stand in the record with the verdicts of their step', () => {
  const facts = { refrigerant: 'R-410A', compressorRating }
  const checks = told(
    visit(facts, ...ports, read('compressor-power', '900 W'), supply('500 V', '420 V', '460 V')),
    undefined,
  )
  expect(checks).toEqual([
    expect.stringMatching(/^Supply: do not run it. Voltage unbalance 8.7 ± \d/),
    expect.stringMatching(
      /^Compressor power: below the band. Measured power 900 ± 38 W is more than 5 % below the expected/,
    ),
  ])
})

test('[property] the limit and its source, the unbalance and what to do follow as reasons', () => {
  const [check] = recordChecks(visit({}, supply('500 V', '420 V', '460 V')), undefined)
  const reasons = check?.reasons.map(({ statement, source }) => `${render(statement, INCH_POUND)} (${source})`)
  expect(reasons?.[0]).toBe('The limit is that of the source (NEMA MG-1)')
  expect(reasons?.join()).toContain('Supply 460 ± 5 V is within 414 V to 506 V')
  expect(reasons?.join()).toContain('Stop the compressor and lock it out')
})

test('[property] after an addition the leak rate by law is told, with what is due; else nothing of it', () => {
  const plate: SystemStatement = { refrigerant: 'R-22', nameplateCharge: '60 lb' }
  const of = visit(plate, added('15 lb'))
  const system = { events: [of], use: 'commercial-refrigeration' } as const
  const checks = recordChecks(of, system)
  const law = checks.find(({ title }) => render(title, INCH_POUND).startsWith('Leak rate, '))
  expect(law?.verdict).toEqual(say`over the threshold`)
  expect(law?.reasons.map(({ statement }) => render(statement, INCH_POUND)).join()).toContain(': by 2026-03-05')
  expect(told(visit(plate), system)).toEqual([])
  expect(told(of, undefined)).toEqual([])
})

test('[limit] what cannot be judged says why; of what nothing was read it says nothing', () => {
  const facts = { refrigerant: 'R-410A', compressorRating }
  expect(told(visit(facts, ...ports), undefined)).toEqual([])
  expect(told(visit(facts, read('compressor-power', '900 W')), undefined)[0]).toContain(
    'Compressor: not judged. Suction pressure: missing',
  )
  expect(told(visit({}, supply('460 V', '461 V')), undefined)[0]).toContain('Supply: not judged. voltages:')
  const unknown = visit({ refrigerant: 'R-22' }, added('1 lb'))
  expect(told(unknown, { events: [unknown], use: 'other' })[0]).toContain('Leak rate: not judged. Full charge: missing')
})
