import fc from 'fast-check'
import { expect, test } from 'vitest'
import { format } from './format.ts'
import { parse } from './parse.ts'
import { describeProblem } from './problem.ts'
import { type Dimension, quantity } from './quantity.ts'
import { findUnit, fromSi, toSi } from './unit.ts'
import { UNITS } from './unit-table.ts'

const DIMENSIONS = [...new Set(UNITS.map((unit) => unit.dimension))]
const dimension = fc.constantFrom(...DIMENSIONS)
const fragment = fc.constantFrom(
  ...UNITS.flatMap((unit) => [unit.symbol, ...unit.spellings]),
  ...'0123456789.,-+/\'"e ±°−½\u202f\n',
  '1,234',
  '14 lb 6 oz',
  'NaN',
  'Infinity',
  '1e308',
  '__proto__',
  'constructor',
)

/** A finite value in SI within bounds of its dimension, or a problem that names the field and is a sentence. */
function expectSane(text: string, accepted: Dimension) {
  const result = parse(text, accepted, { field: 'reading' })
  if (result.ok) {
    expect(result.value.dimension).toBe(accepted)
    expect(Number.isFinite(result.value.si)).toBe(true)
    return
  }
  expect(result.error.field).toBe('reading')
  expect(describeProblem(result.error)).toMatch(/^reading: /)
  if (result.error.kind === 'out-of-range') {
    for (const n of [result.error.value, result.error.min, result.error.max]) expect(Number.isFinite(n)).toBe(true)
  }
}

test('[property] any unicode text gives a finite value or a problem', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), dimension, expectSane), {
    seed: 4,
    numRuns: 20_000,
  })
})

test('[property] any jumble of numbers, signs and units gives a finite value or a problem', () => {
  const jumble = fc.array(fragment, { maxLength: 12 }).map((parts) => parts.join(''))
  fc.assert(fc.property(jumble, dimension, expectSane), { seed: 5, numRuns: 50_000 })
})

test('[property] any number in any unit gives a finite value or a problem', () => {
  fc.assert(
    fc.property(fc.double(), fc.constantFrom(...UNITS), (value, unit) =>
      expectSane(`${value} ${unit.symbol}`, unit.dimension),
    ),
    { seed: 6, numRuns: 20_000 },
  )
})

test.each([
  ['1'.repeat(100_000)],
  [`1${' '.repeat(100_000)}x`],
  [`1 lb${' '.repeat(100_000)}x`],
  [`1 lb${' ,'.repeat(50_000)}6 ozz`],
  [`1 lb 1${'.'.repeat(100_000)}`],
  [`1${"'".repeat(100_000)}`],
  [`1${"' 1".repeat(33_000)}"x`],
  [`-${' '.repeat(100_000)}`],
  [`1e${'1'.repeat(100_000)}!`],
  [`1 ${'a'.repeat(100_000)}`],
  [`1 ${'\u0301\u0316'.repeat(50_000)}`],
  ['½'.repeat(100_000)],
  ['1,'.repeat(50_000)],
  ['\ud800'.repeat(100_000)],
])('[limit] 100 000 characters return a problem that quotes only their beginning', (text) => {
  for (const accepted of DIMENSIONS) {
    const result = parse(text, accepted)
    expect(result.ok).toBe(false)
    if (!result.ok) expect(describeProblem(result.error).length).toBeLessThan(400)
  }
})

/** Values that people meet, per dimension, in SI. */
const USUAL: Readonly<Record<Dimension, readonly [number, number]>> = {
  'gauge pressure': [-1e5, 6e6],
  'absolute pressure': [0, 6e6],
  'pressure difference': [-1e6, 1e6],
  temperature: [200, 450],
  'temperature difference': [-100, 100],
  mass: [0, 20_000],
  length: [0, 300],
  'mass per length': [0, 1],
  elevation: [-400, 6000],
  volume: [0, 100],
  airflow: [0, 50],
  'specific airflow': [0, 1e-4],
  velocity: [0, 60],
  'mass flow': [0, 100],
  power: [0, 1e6],
  'cooling capacity': [0, 1e6],
  'specific enthalpy': [0, 1e6],
  current: [0, 500],
  voltage: [0, 700],
  'relative humidity': [0, 1],
  duration: [0, 1e6],
}

test.each(UNITS.map((unit) => [unit.symbol, unit.dimension, unit] as const))(
  '[property] what is shown in %s (%s) can be typed back, within the digits shown',
  (symbol, dimension, unit) => {
    const [min, max] = USUAL[dimension]
    const shownAbove = unit.scale < 0 ? 0 : max // a vacuum unit shows a vacuum only
    fc.assert(
      fc.property(fc.double({ min, max: shownAbove, noNaN: true }), (si) => {
        const shown = format(quantity(dimension, si), { [dimension]: symbol })
        const result = parse(shown, dimension)
        const lastDigit = 10 ** -unit.decimals
        const back = result.ok ? fromSi(result.value.si, unit) : Number.NaN
        expect(Math.abs(back - fromSi(si, unit)), shown).toBeLessThanOrEqual(0.5 * lastDigit * (1 + 1e-6))
      }),
      { seed: 7, numRuns: 1000 },
    )
  },
)

/** Marks between thousands, and between whole and tenths. */
const WRITTEN = [
  ['', '.'],
  ['', ','],
  [' ', '.'],
  [' ', ','],
  ['\u202f', '.'],
  ["'", '.'],
  [',', '.'],
  ['.', ','],
] as const

test('[property] every way of writing thousands and decimals gives the same quantity', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1000, max: 99_999 }), fc.integer({ min: 0, max: 9 }), (whole, tenth) => {
      const thousands = Math.floor(whole / 1000)
      const rest = String(whole % 1000).padStart(3, '0')
      const unit = findUnit('g', 'mass')!
      const expected = { ok: true, value: quantity('mass', toSi(Number(`${whole}.${tenth}`), unit)) }
      for (const [gap, point] of WRITTEN) {
        expect(parse(`${thousands}${gap}${rest}${point}${tenth} g`, 'mass')).toEqual(expected)
      }
    }),
    { seed: 8, numRuns: 5000 },
  )
})
