import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Grid, gridOf, lookUp, spread } from './chart.ts'

const grid: Grid = {
  rows: [80, 90, 100],
  columns: [60, 70],
  values: [
    [10, 20],
    [8, 18],
    [undefined, 16],
  ],
}

describe('a grid', () => {
  test.each([
    ['on a corner', 80, 60, 10],
    ['on an inner node', 90, 70, 18],
    ['in the middle of a full cell', 85, 65, 14],
    ['on the last row, at the full corner of a broken cell', 100, 70, 16],
    ['along the full edge of a broken cell', 95, 70, 17],
  ])('[property] %s', (_, row, column, value) => {
    expect(lookUp(grid, row, column)).toEqual({ kind: 'value', value })
  })

  // A temperature is kept in kelvin: 67 °F comes back as 67.00000000000006.
  test.each([
    ['on the last row and column', 100 + 6e-14, 70 + 6e-14, 16],
    ['on the first row and column', 80 - 6e-14, 60 - 6e-14, 10],
    ['on a row beside a broken cell', 90 + 6e-14, 65, 13],
  ])(
    '[limit] what was typed %s of the chart is read there, whatever the conversion left over',
    (_, row, column, value) => {
      expect(lookUp(grid, row, column)).toEqual({ kind: 'value', value })
    },
  )

  test('[limit] a cell with an empty corner has no value', () => {
    expect(lookUp(grid, 95, 65)).toEqual({ kind: 'no-value' })
  })

  test.each([
    ['below the rows', 79.9, 65, { kind: 'outside', axis: 'row', min: 80, max: 100 }],
    ['above the columns', 85, 70.1, { kind: 'outside', axis: 'column', min: 60, max: 70 }],
    ['nowhere', Number.NaN, 65, { kind: 'outside', axis: 'row', min: 80, max: 100 }],
  ])('[limit] %s is refused with the range', (_, row, column, answer) => {
    expect(lookUp(grid, row, column)).toEqual(answer)
  })

  test('[property] a bilinear function comes back exactly anywhere inside', () => {
    const f = (x: number, y: number) => 3 + 0.5 * x - 0.25 * y + 0.01 * x * y
    const [rows, columns] = [
      [0, 1, 5, 9],
      [2, 4, 8],
    ] as const
    const exact: Grid = { rows, columns, values: rows.map((x) => columns.map((y) => f(x, y))) }
    const inside = fc.tuple(fc.double({ min: 0, max: 9, noNaN: true }), fc.double({ min: 2, max: 8, noNaN: true }))
    fc.assert(
      fc.property(inside, ([x, y]) => {
        const found = lookUp(exact, x, y)
        // Bilinear in each cell, so exact for one bilinear function over all of them.
        expect(found.kind === 'value' && Math.abs(found.value - f(x, y))).toBeLessThan(1e-9)
      }),
    )
  })

  test('[property] the spread follows the steepest side, also on a node', () => {
    // One degree of row is worth 0.2, one of column 1.
    expect(spread(grid, 90, 1, 65, 0)).toBeCloseTo(0.2, 9)
    expect(spread(grid, 90, 0, 65, 1)).toBeCloseTo(1, 9)
    expect(spread(grid, 90, 1, 65, 1)).toBeCloseTo(Math.hypot(0.2, 1), 9)
  })
})

const csv = (text: string) => gridOf({ form: 'csv', indoor: 'wet-bulb', unit: '°F', csv: text })

describe('a chart as entered', () => {
  test('[property] CSV and grid say the same', () => {
    const asGrid = gridOf({
      form: 'grid',
      indoor: 'wet-bulb',
      unit: '°F',
      outdoorTemperatures: [80, 90, 100],
      indoorTemperatures: [60, 70],
      superheat: [
        [10, 20],
        [8, 18],
        [null, 16],
      ],
    })
    expect(asGrid).toEqual({ ok: true, value: grid })
    expect(csv('outdoor,60,70\n80,10,20\n90,8,18\n100,-,16\n')).toEqual(asGrid)
  })

  test.each([
    ['semicolons and decimal commas', ';60;70\n80;10,5;20\n90;8;18'],
    ['tabs', '\t60\t70\n80\t10.5\t20\n90\t8\t18'],
    ['carriage returns and blank lines', ',60,70\r\n\r\n80,10.5,20\r\n90,8,18\r\n'],
  ])('[property] CSV with %s', (_, text) => {
    const read = csv(text)
    expect(read.ok && lookUp(read.value, 80, 60)).toEqual({ kind: 'value', value: 10.5 })
  })

  test.each([
    ['a word in a cell', ',60,70\n80,ten,20', "maker's chart, line 2, column 2"],
    ['a row too short', ',60,70\n80,10\n90,8,18', "maker's chart, row 1"],
    ['axes that fall', ',70,60\n80,10,20', "maker's chart, indoor temperatures"],
    ['a row twice', ',60,70\n80,10,20\n80,10,20', "maker's chart, outdoor temperatures"],
    ['no axis value', ',60,\n80,10,20', "maker's chart, line 1, column 3"],
    ['nothing at all', '', "maker's chart, outdoor temperatures"],
    ['a header alone', ',60,70', "maker's chart, outdoor temperatures"],
  ])('[limit] %s is refused by name', (_, text, field) => {
    const read = csv(text)
    expect(!read.ok && read.error.field).toBe(field)
  })

  test('[limit] whatever the text, it is a rising full grid or a problem', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.,;-\n\t x'), maxLength: 80 }), (text) => {
        const read = csv(text)
        if (!read.ok) {
          expect(read.error.field).toContain("maker's chart")
          return
        }
        const { rows, columns, values } = read.value
        expect(values.map((row) => row.length)).toEqual(rows.map(() => columns.length))
        expect([...rows, ...columns].every(Number.isFinite)).toBe(true)
      }),
      { numRuns: 5000, seed: 1 },
    )
  })
})
