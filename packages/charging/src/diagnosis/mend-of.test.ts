import { INCH_POUND, render } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { described, ORIFICE, visitOf } from '../../test/visit-of.ts'
import { mendOf } from './mend-of.ts'

test.each([
  ['heat-pump-cooling', true],
  ['comfort-cooling', false],
  ['medium-temperature', false],
] as const)('[property] a weak compressor in %s: the reversing valve is looked at: %s', (application, isLookedAt) => {
  const words = render(mendOf('weak-compressor', visitOf(described({ ...ORIFICE, application }))), INCH_POUND)
  expect(words.includes('reversing valve')).toBe(isLookedAt)
  expect(words).toContain("the maker's curves")
})
