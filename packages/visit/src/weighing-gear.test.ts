import { expect, test } from 'vitest'
import type { Fact } from './event.ts'
import { fold } from './fold.ts'

const at = '2026-02-03T10:00:00Z'
const visitOf = (...facts: readonly Fact[]) =>
  fold({ id: 'v', events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })) })

test('[property] the gear that was told last stands, whole', () => {
  const { gear } = visitOf(
    { kind: 'weighing-gear', scaleStep: '0.5 oz', hoseLength: '60 in' },
    { kind: 'weighing-gear', scaleStep: '5 g' },
  )
  expect(gear).toEqual({ eventId: 'e1', at, position: 1, scaleStep: { dimension: 'mass', si: 0.005 } })
  expect(visitOf().gear).toBeUndefined()
})

test('[limit] a part that cannot be read is named, and the rest stands', () => {
  const { gear, problems } = visitOf({ kind: 'weighing-gear', hoseLength: 'long', hoseInside: '5 mm' })
  expect(gear?.hoseInside?.si).toBe(0.005)
  expect(gear).not.toHaveProperty('hoseLength')
  expect(problems).toMatchObject([{ eventId: 'e0', problem: { field: 'Length of the hose' } }])
})
