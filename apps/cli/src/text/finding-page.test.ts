import { INCH_POUND, quantity, say } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { widthOf } from './columns.ts'
import { findingPage } from './finding-page.ts'

const because = { statement: say`It rose to ${quantity('temperature', 300)}`, source: 'a table', from: [] }
const FINDING = {
  title: ['held', 'evacuation'],
  sentence: say`The vacuum held`,
  steps: [say`Charge into the vacuum without letting air in on the way`],
  reasons: [because],
  cautions: [{ statement: say`Wear eye protection`, source: 'common practice' }],
} as const

test('[property] opens with the finding, and gives each part and each source once, in order', () => {
  const text = findingPage(FINDING, INCH_POUND, 60)
  expect(text.split('\n').filter((line) => /^\S/.test(line))).toEqual([
    expect.stringMatching(/^held +evacuation$/),
    'Do',
    'Because',
    'Take care',
    'Sources',
  ])
  expect(text).toContain('It rose to 80.3 °F [1]')
  expect(text).toContain('   2 common practice')
})

test('[limit] a part with nothing to say is left out, and a narrow terminal is kept to', () => {
  const bare = findingPage({ ...FINDING, steps: [], reasons: [], cautions: [] }, INCH_POUND, 60)
  expect(bare.trimEnd().split('\n')).toHaveLength(2)
  const narrow = findingPage(FINDING, INCH_POUND, 40).split('\n')
  expect(Math.max(...narrow.map(widthOf))).toBeLessThanOrEqual(40)
})
