import { expect, test } from 'vitest'
import { prefilled } from './prefilled.ts'

const BLANKS = {
  mass: { label: 'Mass', accepts: ['mass'], example: '1 oz' },
  mark: { label: 'Mark', accepts: [], example: 'C4', initial: 'C1' },
} as const

test('[property] each blank shows its own text; one without keeps what stood in it', () => {
  expect(prefilled(BLANKS, { mass: '5 oz' })).toEqual({
    mass: { ...BLANKS.mass, initial: '5 oz' },
    mark: BLANKS.mark,
  })
  expect(prefilled(BLANKS, undefined).mark).toEqual(BLANKS.mark)
})
