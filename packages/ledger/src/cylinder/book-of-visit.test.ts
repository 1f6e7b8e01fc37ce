import { type Fact, fold } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { balanceBook } from './balance-book.ts'
import { bookOfVisit } from './book-of-visit.ts'

const at = '2026-02-03T10:00:00Z'
const visitOf = (...facts: readonly Fact[]) =>
  fold({ id: 'v', events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })) })
const cylinder = {
  kind: 'cylinder-weighed',
  cylinder: 'R-7',
  refrigerant: 'R-22',
  holds: 'recovered',
  refillable: true,
  tare: '27 lb',
  waterCapacity: '47.7 lb',
  gross: '50 lb',
} as const
const recovered = (before: string, after: string, mass: string): Fact => ({
  kind: 'refrigerant-moved',
  direction: 'out-of-system',
  mass,
  phase: 'liquid',
  port: 'liquid-line',
  compressor: 'stopped',
  refrigerant: 'R-22',
  cylinder: 'R-7',
  cylinderBefore: before,
  cylinderAfter: after,
})

test('[property] what the scale says of the cylinder is what it holds, and the system gave as much', () => {
  const { book, problems } = bookOfVisit(visitOf(cylinder, recovered('50 lb', '55 lb', '5 lb')))
  expect(problems).toEqual([])
  const { cylinders, systems, findings } = balanceBook(book)
  expect(cylinders[0]!.content.si / 0.45359237).toBeCloseTo(28, 9)
  expect(systems[0]!.recovered.si / 0.45359237).toBeCloseTo(5, 9)
  expect(findings).toEqual([])
})

test('[property] a recovery cylinder filled beyond 80 % of its volume is found', () => {
  const { book } = bookOfVisit(visitOf(cylinder, recovered('50 lb', '75 lb', '25 lb')))
  expect(balanceBook(book).findings.map(({ kind }) => kind)).toEqual(['overfilled'])
})

test('[limit] a move into a cylinder that nobody described cannot be counted', () => {
  const { book } = bookOfVisit(visitOf(recovered('50 lb', '55 lb', '5 lb')))
  expect(balanceBook(book).problems).toMatchObject([{ kind: 'unknown', value: 'R-7' }])
})
