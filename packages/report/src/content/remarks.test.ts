import { assess } from '@chargewright/charging'
import { inEnglish, METRIC, teller } from '@chargewright/quantity'
import { fold, type VisitEvent } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { example } from '../../../../examples/example-visits.ts'
import { correctionRows, doubtLines, happeningRows, problemLines } from './remarks.ts'

const tell = teller(METRIC, inEnglish)
const at = '2026-07-01T12:00:00Z'
const answered = (...events: readonly VisitEvent[]) => {
  const visit = fold({ id: 'invented', events })
  return { visit, assessment: assess(visit) }
}

test('[property] a correction shows what stood first, what holds now, and why', () => {
  expect(correctionRows(example('step-by-step').visit, tell)).toEqual([
    {
      at: '2026-06-23T09:40:00Z',
      entered: 'Suction line “36 °F”',
      holds: 'Suction line “63 °F”',
      reasons: ['two digits changed places'],
    },
  ])
})

test('[property] what was withdrawn, and what used an id again, is not passed over', () => {
  const { visit } = answered(
    { id: 'a', at, kind: 'note', text: 'first' },
    { id: 'a', at, kind: 'note', text: 'second' },
    { id: 'b', at, kind: 'correction', corrects: 'a' },
  )
  expect(correctionRows(visit, tell).map(({ entered, holds }) => [entered, holds])).toEqual([
    ['Note: first', 'withdrawn'],
    ['Note: second', 'not used: its id was used before'],
  ])
  expect(happeningRows(visit, tell)).toEqual([])
})

test('[property] problems and doubts are each told once, with what would have been accepted', () => {
  const { assessment } = answered(
    { id: 'a', at, kind: 'reading', what: 'suction-pressure', value: 'plenty' },
    { id: 'b', at, kind: 'reading', what: 'suction-temperature', value: '300 °F' },
    { id: 'c', at, kind: 'system-described', facts: { refrigerant: 'R-410A' } },
  )
  expect(problemLines(assessment, tell)).toEqual([expect.stringContaining('cannot read “plenty”')])
  expect(doubtLines(assessment, tell)).toEqual(['Suction line: 300 °F is outside -76 to 140 °F'])
})
