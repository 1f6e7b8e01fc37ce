import { expect, test } from 'vitest'
import { INCH_POUND, METRIC } from './preference.ts'
import { quantity } from './quantity.ts'
import { render, say } from './statement.ts'

const superheat = quantity('temperature difference', 12.4, 0.55)
const limit = quantity('temperature difference', 10 / 1.8)

test('[property] one statement is read in either unit system', () => {
  const statement = say`Superheat ${superheat} is above ${limit}`
  expect(statement.template).toBe('Superheat {0} is above {1}')
  expect(render(statement, INCH_POUND)).toBe('Superheat 22.3 ± 2.0 °F is above 10.0 °F')
  expect(render(statement, METRIC)).toBe('Superheat 12.4 ± 1.1 K is above 5.6 K')
})

test('[property] statements, words and numbers nest; a value is never read as a template', () => {
  const reason = say`the ${'{0} valve'} closed ${3} times at ${quantity('gauge pressure', 496_422.5)}`
  expect(render(say`Wait: ${reason}.`, INCH_POUND)).toBe('Wait: the {0} valve closed 3 times at 72.0 psig.')
})

test('[limit] a statement without values is its own text', () => {
  expect(render(say`Recover, never vent.`, METRIC)).toBe('Recover, never vent.')
})

test('[property] a translation may put the values in another order, or twice', () => {
  const statement = say`${superheat} over ${limit}`
  expect(render({ ...statement, template: '{1}, {0}, {1}' }, METRIC)).toBe('5.6 K, 12.4 ± 1.1 K, 5.6 K')
})
