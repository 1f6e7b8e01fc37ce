import { describe, expect, test } from 'vitest'
import { toKelvin } from './dew-unit.ts'
import { readRatingPoints } from './read-rating-points.ts'

const F = (t: number) => toKelvin(t, '°F')
const GRID = 'discharge \\ suction,30,40\n90,364.7,440.9\n100,-,436.9\n110,,431.7'

test('[property] a grid is its points, empty cells and dashes left out', () => {
  expect(readRatingPoints(GRID, '°F')).toEqual({
    ok: true,
    value: [
      { suctionDew_K: F(30), dischargeDew_K: F(90), value: 364.7 },
      { suctionDew_K: F(40), dischargeDew_K: F(90), value: 440.9 },
      { suctionDew_K: F(40), dischargeDew_K: F(100), value: 436.9 },
      { suctionDew_K: F(40), dischargeDew_K: F(110), value: 431.7 },
    ],
  })
})

test('[property] decimal commas and semicolons give the same points', () => {
  expect(readRatingPoints(GRID.replaceAll(',', ';').replaceAll('.', ','), '°F')).toEqual(readRatingPoints(GRID, '°F'))
})

describe('what is refused, and where', () => {
  test.each([
    ['nothing', ' \n ', 'rating table'],
    ['a word among the suction temperatures', GRID.replace('30', 'cold'), 'rating table, heading'],
    ['a word for a discharge temperature', GRID.replace('100', 'hot'), 'rating table, line 3, first cell'],
    ['a word for a value', GRID.replace('440.9', 'high'), 'rating table, line 2'],
    ['more values than suction temperatures', `${GRID}\n120,1,2,3`, 'rating table, line 5'],
  ])('[limit] %s', (_, text, field) => {
    expect(readRatingPoints(text, '°F')).toMatchObject({ ok: false, error: { field } })
  })
})
