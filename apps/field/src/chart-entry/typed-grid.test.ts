import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { blockOf, chartOfGrid, EMPTY_GRID, gridOfChart, type TypedGrid, withBlock, withCell } from './typed-grid.ts'

const KIND = { indoor: 'wet-bulb', unit: '°F' } as const
const rows = (...lines: readonly string[]): TypedGrid => lines.map((line) => line.split(','))

describe('typing', () => {
  test('[property] there is always an empty row and column to go on in', () => {
    fc.assert(
      fc.property(fc.nat(30), fc.nat(30), (row, column) => {
        const grid = withCell(EMPTY_GRID, row, column, '7')
        expect(grid[row]![column]).toBe('7')
        expect(grid.at(-1)!.every((text) => text === '')).toBe(true)
        expect(grid.every((each) => each.at(-1) === '' && each.length === grid[0]!.length)).toBe(true)
      }),
      { seed: 3 },
    )
  })

  test('[property] a block is laid over the grid from the cell it is pasted in', () => {
    const grid = withBlock(withCell(EMPTY_GRID, 0, 1, '58'), 1, 0, blockOf('85\t12\r\n95\t6\r\n')!)
    expect(grid.slice(0, 3).map((row) => row.slice(0, 2))).toEqual([
      ['', '58'],
      ['85', '12'],
      ['95', '6'],
    ])
  })

  test('[limit] one cell is no block, nor is a decimal comma', () => {
    expect(blockOf('12,5')).toBeUndefined()
    expect(blockOf('12')).toBeUndefined()
    expect(blockOf(',58,62\n85,12,17')).toEqual([
      ['', '58', '62'],
      ['85', '12', '17'],
    ])
    expect(blockOf('12,5;13')).toEqual([['12,5', '13']])
  })
})

describe('the chart of the texts', () => {
  test('[property] rows and columns come in rising order, empty cells stay empty, signs and commas are read', () => {
    const chart = chartOfGrid(rows(',66,58°F', '95,11.5,', '−5,7,'), KIND)
    expect(chart).toEqual({
      ok: true,
      value: {
        ...KIND,
        form: 'grid',
        outdoorTemperatures: [-5, 95],
        indoorTemperatures: [58, 66],
        superheat: [
          [null, 7],
          [null, 11.5],
        ],
      },
    })
  })

  test('[property] a kept chart comes back as it was typed', () => {
    const chart = chartOfGrid(rows(',58,66', '85,12,17', '95,6,'), KIND)
    if (!chart.ok) throw new Error('chart')
    expect(chartOfGrid(gridOfChart(chart.value), KIND)).toEqual(chart)
  })

  test.each([
    [EMPTY_GRID, 'missing', 'temperatures and superheats of the chart'],
    [rows(',58', '85,often'), 'unreadable', 'chart, row 2, column 2'],
    [rows(',58', ',12'), 'missing', 'chart, row 2, column 1'],
    [rows(',58', '85,12', '85,13'), 'unreadable', 'chart'],
  ] as const)('[limit] what cannot be a chart says where', (grid, kind, field) => {
    expect(chartOfGrid(grid, KIND)).toMatchObject({ ok: false, error: { kind, field } })
  })
})
