import { type Evidence, METRIC, quantity, say } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { citations } from './citations.ts'
import { evidenceLines } from './evidence-lines.ts'

const leaf: Evidence = { statement: say`typed ${quantity('temperature', 290.15)}`, source: 'gauge', from: [] }
const branch: Evidence = { statement: say`derived`, from: [leaf] }

test('[property] a tree is written down to what was typed, its sources numbered once', () => {
  const words = citations()
  expect(evidenceLines([{ statement: say`verdict`, source: 'rule', from: [branch, leaf] }], METRIC, words)).toEqual([
    { depth: 0, text: 'verdict', source: 1 },
    { depth: 1, text: 'derived' },
    { depth: 2, text: 'typed 17.0 °C', source: 2 },
    { depth: 1, text: 'typed 17.0 °C', source: 2 },
  ])
  expect(words.sources()).toEqual(['rule', 'gauge'])
})

test('[property] a branch that was opened is named again and not opened again', () => {
  const lines = evidenceLines([branch, branch], METRIC, citations())
  expect(lines.map(({ text }) => text)).toEqual(['derived', 'typed 17.0 °C', 'derived (as above)'])
})
