import { expect, test } from 'vitest'
import type { Fact, FactOf } from './event.ts'
import { fold } from './fold.ts'

const at = '2026-02-03T10:00:00Z'
const visitOf = (...facts: readonly Fact[]) =>
  fold({ id: 'v', events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })) })
const cylinder = (mark: string, gross: string): Fact => ({
  kind: 'cylinder-weighed',
  cylinder: mark,
  refrigerant: 'R-410A',
  holds: 'new',
  refillable: false,
  tare: '5 lb',
  waterCapacity: '26 lb',
  gross,
})
const move: FactOf<'refrigerant-moved'> = {
  kind: 'refrigerant-moved',
  direction: 'into-system',
  mass: '1 lb',
  phase: 'liquid',
  port: 'liquid-line',
  compressor: 'stopped',
}

test('[property] a cylinder described again takes the place of the first, and others keep theirs', () => {
  const { cylinders } = visitOf(cylinder('A', '25 lb'), cylinder('B', '20 lb'), cylinder('A', '24 lb'))
  expect(cylinders.map(({ fact, eventId }) => [fact.cylinder, eventId])).toEqual([
    ['A', 'e2'],
    ['B', 'e1'],
  ])
  expect(cylinders[0]?.gross.si).toBeCloseTo(24 * 0.45359237, 12)
  expect(cylinders[0]?.gross.u).toBeGreaterThan(0)
  expect(cylinders[0]?.tare.u).toBeUndefined()
})

test('[limit] one of which a weight cannot be read is left out, and each such weight is named', () => {
  const unreadable = { ...(cylinder('A', 'heavy') as FactOf<'cylinder-weighed'>), tare: 'light' }
  const { cylinders, problems } = visitOf(unreadable)
  expect(cylinders).toEqual([])
  expect(problems.map(({ problem }) => problem.field)).toEqual(['Tare of the cylinder', 'Cylinder on the scale'])
})

test('[property] a move keeps the gross weights where both were taken', () => {
  const { moves } = visitOf(
    { ...move, cylinderBefore: '25 lb', cylinderAfter: '24 lb', hoses: '0.5 oz' },
    { ...move, cylinderBefore: '25 lb' },
  )
  expect(moves[0]?.weighing?.before.si).toBeCloseTo(25 * 0.45359237, 12)
  expect(moves[0]?.weighing?.hoses?.si).toBeCloseTo(0.5 * 0.028349523125, 12)
  expect(moves[1]).not.toHaveProperty('weighing')
})

test('[limit] a gross weight that cannot be read leaves the mass of the move', () => {
  const { moves, problems } = visitOf({ ...move, cylinderBefore: 'full', cylinderAfter: '24 lb' })
  expect(moves).toHaveLength(1)
  expect(moves[0]).not.toHaveProperty('weighing')
  expect(problems).toMatchObject([{ eventId: 'e0', problem: { field: 'Cylinder before' } }])
})
