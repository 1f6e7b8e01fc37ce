import { type FactOf, fold, type VisitEvent } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { cylinder } from '../../test/any-book.ts'
import { balanceBook } from './balance-book.ts'
import { movementsOfVisit } from './movements-of-visit.ts'

const at = '2026-02-03T10:00:00Z'
const move = (mass: string): FactOf<'refrigerant-moved'> => ({
  kind: 'refrigerant-moved',
  direction: 'into-system',
  mass,
  phase: 'vapour',
  port: 'suction',
  compressor: 'running',
  cylinder: 'A',
})
const moved = (id: string, mass: string): VisitEvent => ({ id, at, ...move(mass) })
const described: VisitEvent = { id: 'd', at, kind: 'system-described', facts: { refrigerant: 'R410A' } }
const visit = (...events: VisitEvent[]) => fold({ id: 'v1', events: [described, ...events] })

test('[property] the moves of a visit, as corrected, become movements that the book takes up', () => {
  const corrected: VisitEvent = { id: 'c', at, kind: 'correction', corrects: 'e1', replacement: move('500 g') }
  const { movements, problems } = movementsOfVisit(visit(moved('e1', '5 kg'), moved('e2', '250 g'), corrected), 'shop')
  expect(problems).toEqual([])
  expect(movements.map(({ id }) => id)).toEqual(['v1/e1', 'v1/e2'])
  const entries = movements.map((movement) => ({ kind: 'moved', movement }) as const)
  const { systems, findings } = balanceBook({ cylinders: [cylinder('A')], entries })
  expect(findings).toEqual([])
  expect(systems[0]?.net.si).toBeCloseTo(0.75, 12)
})

test('[property] where gross weights were taken they count, and the mass of the visit is held against them', () => {
  const weighed = { ...moved('e1', '900 g'), cylinderBefore: '18 kg', cylinderAfter: '17 kg' } as VisitEvent
  const { movements } = movementsOfVisit(visit(weighed), 'shop')
  const entries = movements.map((movement) => ({ kind: 'moved', movement }) as const)
  const { systems, findings } = balanceBook({ cylinders: [cylinder('A')], entries })
  expect(systems[0]?.net.si).toBeCloseTo(1, 12)
  expect(findings.map(({ kind }) => kind)).toEqual(['disagrees-with-visit'])
})

test('[limit] a move that names no cylinder, or of a refrigerant that nobody named, is a problem of its event', () => {
  const nameless = fold({ id: 'v2', events: [moved('e1', '1 lb')] })
  expect(movementsOfVisit(nameless, 'shop').problems).toMatchObject([
    { eventId: 'e1', problem: { kind: 'missing', field: 'refrigerant of the move' } },
  ])
  const { cylinder: _, ...without } = move('1 lb')
  expect(movementsOfVisit(visit({ id: 'e1', at, ...without }), 'shop').problems).toMatchObject([
    { eventId: 'e1', problem: { kind: 'missing', field: 'cylinder of the move' } },
  ])
})
