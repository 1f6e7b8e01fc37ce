import { INCH_POUND, inEnglish } from '@chargewright/quantity'
import type { Fact } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { cylindersOf } from './cylinders-of.ts'
import { tightnessOf } from './tightness-of.ts'

const at = '2026-06-03T13:00:00Z'
const visit = (...facts: readonly Fact[]) => ({
  id: 'v',
  events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })),
})
const vacuum = (after: string, pressure: string): Fact => ({ kind: 'vacuum-reading', after, pressure })

test('[property] the last test under vacuum is judged and drawn, and all of it can be copied to the page', () => {
  const found = tightnessOf(
    visit(vacuum('0 min', '250 micron'), vacuum('60 min', '420 micron')),
    INCH_POUND,
    'phone',
    inEnglish,
  )
  expect(found.vacuum?.ok && found.vacuum.value.finding.kind).toBe('pass')
  expect(found.vacuum?.ok && found.vacuum.value.picture.svg).toContain('limit 500 micron')
  expect(structuredClone(found)).toEqual(found)
  expect(found).not.toHaveProperty('pressure')
})

test('[limit] a test that cannot be judged says why', () => {
  const found = tightnessOf(visit({ kind: 'pressure-test', gas: 'nitrogen' }), INCH_POUND, 'phone', inEnglish)
  expect(found.pressure).toMatchObject({ ok: false, error: { field: 'readings of the pressure test' } })
})

test('[property] a cylinder that was sold filled has no room, a recovery cylinder what is left of its limit', () => {
  const cylinder = {
    kind: 'cylinder-weighed',
    refrigerant: 'R-22',
    tare: '27 lb',
    waterCapacity: '47.7 lb',
    gross: '50 lb',
  } as const
  const { balance, room } = cylindersOf(
    visit(
      { ...cylinder, cylinder: 'new', holds: 'new', refillable: false },
      { ...cylinder, cylinder: 'back', holds: 'recovered', refillable: true },
    ),
  )
  expect(balance.cylinders.map(({ cylinder }) => cylinder.id)).toEqual(['new', 'back'])
  expect(room[0]).toBeUndefined()
  expect(room[1]?.ok && room[1].value.si).toBeGreaterThan(0)
})
