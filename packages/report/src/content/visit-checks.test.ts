import { INCH_POUND, render, say } from '@chargewright/quantity'
import { type Fact, fold } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { visitChecks } from './visit-checks.ts'

const at = '2026-02-03T10:00:00Z'
const checksOf = (...facts: readonly Fact[]) =>
  visitChecks(fold({ id: 'v', events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })) }), INCH_POUND)

test('[property] tests and cylinders of the visit are told in the order of the work, each with its verdict', () => {
  const checks = checksOf(
    {
      kind: 'cylinder-weighed',
      cylinder: 'C1',
      refrigerant: 'R-410A',
      holds: 'new',
      refillable: false,
      tare: '5 lb',
      waterCapacity: '26 lb',
      gross: '25 lb',
    },
    { kind: 'vacuum-test', criterion: 'habit' },
    { kind: 'vacuum-reading', after: '0 min', pressure: '240 micron' },
    { kind: 'vacuum-reading', after: '10 min', pressure: '400 micron' },
    { kind: 'pressure-test-reading', after: '0 h', pressure: '300 psig', temperature: '75 °F' },
    { kind: 'pressure-test-reading', after: '24 h', pressure: '300 psig', temperature: '75 °F' },
  )
  expect(checks.map(({ title, verdict }) => render(say`${title}: ${verdict}`, INCH_POUND))).toEqual([
    'Standing pressure test: no leak seen',
    'Evacuation: held',
    'Cylinder C1, new R-410A: adds up',
  ])
  expect(render(checks[1]!.sentence, checks[1]!.units!)).toBe('The vacuum held: at most 400 micron in 10 min')
})

test('[property] gauge pressures count from the atmosphere of the site', () => {
  const start = (...facts: readonly Fact[]) =>
    render(
      checksOf(
        ...facts,
        { kind: 'pressure-test-reading', after: '0 h', pressure: '300 psig', temperature: '75 °F' },
        { kind: 'pressure-test-reading', after: '24 h', pressure: '300 psig', temperature: '75 °F' },
      )[0]!.reasons[0]!.from[0]!.statement,
      INCH_POUND,
    )
  expect(start()).toContain('314.7')
  expect(start({ kind: 'system-described', facts: { elevation: '5000 ft' } })).toContain('312.2')
})

test('[limit] a test that cannot be judged yet says why, and is not left out', () => {
  const [standing, vacuum] = checksOf(
    { kind: 'pressure-test', gas: 'nitrogen' },
    { kind: 'vacuum-test', criterion: 'specification' },
  )
  expect([standing?.verdict, vacuum?.verdict]).toEqual([say`not judged`, say`not judged`])
  expect(render(vacuum!.sentence, INCH_POUND)).toContain('Vacuum: missing')
})
