import { factLabel, SystemStatementSchema } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { SYSTEM_GROUPS } from './system-groups.ts'

test('[property] every fact that a visit can hold stands in the form, once, under a label of its own', () => {
  const shown = SYSTEM_GROUPS.flatMap(({ facts }) => facts)
  expect(shown.toSorted()).toEqual(Object.keys(SystemStatementSchema.entries).toSorted())
  expect(new Set(shown.map(factLabel)).size).toBe(shown.length)
})
