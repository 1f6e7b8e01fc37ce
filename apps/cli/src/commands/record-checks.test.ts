import { readFileSync } from 'node:fs'
import { INCH_POUND, render } from '@chargewright/quantity'
import type { Fact } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { visitOf } from '../../../../examples/example-visits.ts'
import { recordChecks } from './record-checks.ts'

const book = JSON.parse(readFileSync('examples/service/cylinder-book.json', 'utf8'))
const [disposable, refillable] = book.cylinders

function checksOf(sources: Parameters<typeof recordChecks>[1], ...facts: readonly Fact[]) {
  const checks = recordChecks(visitOf(...facts).visit, sources, INCH_POUND)
  if (!checks.ok) throw new Error(JSON.stringify(checks.error))
  return checks.value
}

test('[property] gauge pressures of a standing test count from the atmosphere of the visit', () => {
  const pressureTest = ['0 h, 300 psig, 90 degF', '12 h, 283 psig, 60 degF']
  const start = (...facts: readonly Fact[]) =>
    render(checksOf({ pressureTest }, ...facts)[0]!.reasons[0]!.from[0]!.statement, INCH_POUND)
  expect(start()).toContain('314.7')
  expect(start({ kind: 'system-described', facts: { elevation: '5000 ft' } })).toContain('312.2')
})

test('[limit] a cylinder that may not be filled, and an entry that cannot stand, are told', () => {
  const into = { ...book.entries[1].movement, id: 'x1', cylinder: disposable.id, refrigerant: 'R-410A' }
  const weighing = { kind: 'difference', mass: '1 lb' }
  const nowhere = { ...into, id: 'x2', cylinder: 'demo nobody’s' }
  const entries = [into, nowhere].map((movement) => ({ kind: 'moved', movement: { ...movement, weighing } }))
  const checks = checksOf({ cylinders: { ...book, cylinders: [disposable, refillable], entries } })
  expect(checks.map(({ verdict }) => render(verdict, INCH_POUND))).toEqual(['must not be', 'adds up', 'not whole'])
  expect(render(checks[2]!.reasons[0]!.statement, INCH_POUND)).toContain('demo nobody’s')
})
