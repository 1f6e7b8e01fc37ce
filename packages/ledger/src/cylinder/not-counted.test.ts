import { METRIC, render } from '@chargewright/quantity'
import { type Fact, fold } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { balanceBook } from './balance-book.ts'
import { bookOfVisit } from './book-of-visit.ts'
import { notCounted } from './not-counted.ts'

const moved = (cylinder?: string): Fact => ({
  kind: 'refrigerant-moved',
  direction: 'into-system',
  mass: '200 g',
  phase: 'vapour',
  port: 'suction',
  compressor: 'running',
  refrigerant: 'R-22',
  ...(cylinder ? { cylinder } : {}),
})

const told = (...facts: readonly Fact[]) => {
  const events = facts.map((fact, i) => ({ id: `e${i}`, at: '2026-02-03T10:00:00Z', ...fact }))
  const { book, problems } = bookOfVisit(fold({ id: 'v', events }))
  return notCounted(balanceBook(book).problems, problems).map((sentence) => render(sentence, METRIC))
}

test('[property] moves that are left out for one reason are told in one sentence', () => {
  expect(told(moved(), moved(), moved('R-7'), moved('R-7'), moved('R-8'))).toEqual([
    'Not counted: 2 moves with no cylinder named. Correct that in the log',
    'Not counted: what moved from or into cylinder R-7, which was not weighed in here',
    'Not counted: what moved from or into cylinder R-8, which was not weighed in here',
  ])
})

test('[limit] one move is one, and a refrigerant that nobody named is asked for', () => {
  const { refrigerant: _, ...nameless } = moved('R-7') as Extract<Fact, { kind: 'refrigerant-moved' }>
  expect(told(nameless)).toEqual(['Not counted: 1 move of a refrigerant that nobody named. Name it at the system'])
  expect(told()).toEqual([])
})
