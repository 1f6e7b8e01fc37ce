import { INCH_POUND, inEnglish, teller } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { visitOf } from '../../../../examples/example-visits.ts'
import { systemRows } from './system-rows.ts'

const refrigerantRow = (typed: string) => {
  const { system } = visitOf({ kind: 'system-described', facts: { refrigerant: typed } }).visit
  return systemRows(system, INCH_POUND, teller(INCH_POUND, inEnglish)).find(({ what }) => what === 'refrigerant')
}

test.each([
  ['410a', { value: 'R-410A', typed: '410a' }],
  ['propane', { value: 'R-290', typed: 'propane' }],
  ['R-410A', { value: 'R-410A' }],
  ['R-999', { value: 'R-999' }],
])('[property] a refrigerant typed as “%s” goes by its designation', (typed, said) => {
  expect(refrigerantRow(typed)).toEqual({ what: 'refrigerant', label: 'Refrigerant', ...said })
})
