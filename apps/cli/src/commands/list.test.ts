import { refrigerantNames } from '@chargewright/refrigerant'
import { expect, test } from 'vitest'
import { list, listed } from './list.ts'

test('[property] without names it lists every refrigerant that can be computed, with its glide', () => {
  const rows = list([]).map((row) => (row.ok ? row.value : undefined))
  expect(rows.map((row) => row?.refrigerant)).toEqual(refrigerantNames())
  expect(rows.filter((row) => row?.kind === 'blend' && row.glide_K === undefined)).toEqual([])
})

test('[property] every value has a source, and what is not confirmed is named', () => {
  const row = listed('R-454B')
  if (!row.ok) throw new Error('not listed')
  const { refrigerant, kind, sources, unconfirmed, ...values } = row.value
  expect([refrigerant, kind]).toEqual(['R-454B', 'blend'])
  expect(Object.keys(sources)).toEqual(Object.keys(values))
  expect(Object.keys(values)).toEqual(expect.arrayContaining([...unconfirmed]))
})

test('[limit] an unknown name is a problem, and the others are still listed', () => {
  expect(list(['R-32', 'R-99999']).map((row) => row.ok)).toEqual([true, false])
})
