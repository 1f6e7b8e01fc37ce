import { INCH_POUND, METRIC, quantity, say } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { DESK, PHONE, visitTrend } from '../src/index.ts'
import { textsOf, unclosed } from './drawn.ts'

const superheat = (visit: number, K: number, u = 0.5) => ({
  visit,
  called: `visit of day ${visit}`,
  value: quantity('temperature difference', K, u),
})

describe('a measure over the visits', () => {
  test.each([
    ['two visits', [superheat(1, 7), superheat(2, 12)]],
    ['a visit between without the reading', [superheat(1, 7), superheat(3, 12), superheat(9, 4)]],
    ['values that do not change', [superheat(1, 7), superheat(2, 7)]],
    ['a negative value', [superheat(1, -2), superheat(2, 3)]],
    ['forty visits', Array.from({ length: 40 }, (_, i) => superheat(i + 1, 5 + Math.sin(i)))],
  ])('[property] %s: whole, inside its sheet, the last value written, every value in the table', (_, points) => {
    for (const sheet of [DESK, PHONE]) {
      for (const preference of [INCH_POUND, METRIC]) {
        const picture = visitTrend(say`superheat`, points, preference, sheet)!
        expect(unclosed(picture.svg)).toEqual([])
        expect(picture.svg).not.toMatch(/NaN|undefined|Infinity/)
        expect(picture.table.rows).toHaveLength(points.length)
        for (const { words, left, right } of textsOf(picture.svg)) {
          expect([words, left >= -0.02 && right <= sheet.width + 0.02]).toEqual([words, true])
        }
      }
    }
  })

  test('[property] it is drawn in the units of the reader and says where it began and ended', () => {
    const picture = visitTrend(say`superheat`, [superheat(1, 10, 0), superheat(2, 5, 0)], INCH_POUND)!
    expect(textsOf(picture.svg).map(({ words }) => words)).toEqual(expect.arrayContaining(['superheat, °F', '9.0 °F']))
    expect(picture.description).toBe('2 visits, from 18.0 °F at the first to 9.0 °F at the last.')
    expect(picture.table.rows[0]).toEqual(['1', 'visit of day 1', '18.0 °F'])
  })

  test('[limit] one value makes no trend', () => {
    expect(visitTrend(say`superheat`, [], METRIC)).toBeUndefined()
    expect(visitTrend(say`superheat`, [superheat(1, 7)], METRIC)).toBeUndefined()
  })
})
