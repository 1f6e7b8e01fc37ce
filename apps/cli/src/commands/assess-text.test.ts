import { readdirSync, readFileSync } from 'node:fs'
import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { widthOf } from '../text/columns.ts'
import { type AssessAnswer, assess } from './assess.ts'
import { assessText } from './assess-text.ts'

const files = readdirSync('examples').filter((file) => file.endsWith('.json'))

function answerOf(file: string): AssessAnswer {
  const answer = assess(readFileSync(`examples/${file}`, 'utf8'))
  if (!answer.ok) throw new Error(`${file} cannot be read`)
  return answer.value
}

const MARKS = {
  add: '+',
  recover: '−',
  hold: '=',
  'not-the-charge': '≠',
  'not-ready': '…',
  'cannot-tell': '?',
} as const

describe('the page of an assessment', () => {
  test.each(files)('[property] of %s opens with the mark of its finding and keeps to the width', (file) => {
    const answer = answerOf(file)
    for (const units of [INCH_POUND, METRIC]) {
      for (const width of [40, 57, 80, 100]) {
        const lines = assessText(answer, units, width).split('\n')
        expect(lines[0]?.startsWith(`${MARKS[answer.assessment.finding.kind]} `)).toBe(true)
        expect(lines.filter((line) => widthOf(line) > width && line.trim().includes(' '))).toEqual([])
      }
    }
  })

  test('[property] lists every source that it cites, once and in order', () => {
    const [text, sources = ''] = assessText(answerOf('orifice-add.json'), INCH_POUND, 80).split('\nSources\n')
    const cited = [...(text ?? '').matchAll(/\[(\d+)\]/g)].map(([, number]) => Number(number))
    const listed = [...sources.matchAll(/^ {2}[ \d]\d? (?=\S)/gm)].map(([number]) => Number(number))
    expect(listed).toEqual(listed.map((_, i) => i + 1))
    expect([...new Set(cited)].toSorted((a, b) => a - b)).toEqual(listed)
  })

  test('[property] opens a derived value once, and names it again where it is used again', () => {
    const text = assessText(answerOf('orifice-add.json'), INCH_POUND, 80)
    expect(text.match(/typed “67 °F”/g)).toHaveLength(1)
    expect(text).toContain('(as above)')
  })
})
