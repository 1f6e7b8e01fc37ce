import { type Evidence, inEnglish, METRIC, quantity, say, teller } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { citations } from './citations.ts'
import { evidenceLines } from './evidence-lines.ts'

const tell = teller(METRIC, inEnglish)
const leaf: Evidence = { statement: say`typed ${quantity('temperature', 290.15)}`, source: 'gauge', from: [] }
const branch: Evidence = { statement: say`derived`, from: [leaf] }

test('[property] a tree is written down to what was typed, its sources numbered once', () => {
  const citing = citations(inEnglish)
  expect(evidenceLines([{ statement: say`verdict`, source: 'rule', from: [branch, leaf] }], tell, citing)).toEqual([
    { depth: 0, text: 'verdict', source: 1 },
    { depth: 1, text: 'derived' },
    { depth: 2, text: 'typed 17.0 °C', source: 2 },
    { depth: 1, text: 'typed 17.0 °C', source: 2 },
  ])
  expect(citing.sources()).toEqual(['rule', 'gauge'])
})

test('[property] a branch that was opened is named again and not opened again', () => {
  const lines = evidenceLines([branch, branch], tell, citations(inEnglish))
  expect(lines.map(({ text }) => text)).toEqual(['derived', 'typed 17.0 °C', 'derived (as above)'])
})
