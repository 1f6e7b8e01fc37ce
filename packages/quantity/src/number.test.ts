import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readNumber } from './number.ts'

test.each([
  ['72', 72],
  ['+72', 72],
  ['-3', -3],
  ['- 3', -3],
  ['29.5', 29.5],
  ['4,9', 4.9],
  ['.5', 0.5],
  [',5', 0.5],
  ['5.', 5],
  ['0,234', 0.234],
  ['-0,234', -0.234],
  ['1,2345', 1.2345],
  ['1.234', 1.234],
  ['1 200', 1200],
  ['1\u202f200', 1200],
  ["1'200", 1200],
  ['1 200 300,5', 1_200_300.5],
  ['1,234.5', 1234.5],
  ['1.234,5', 1234.5],
  ['1,234,567', 1_234_567],
  ['1.234.567', 1_234_567],
  ['2e3', 2000],
  ['1.5E-3', 0.0015],
  ['1/4', 0.25],
  ['6 1/4', 6.25],
  ['6-1/4', 6.25],
  ['-6 1/4', -6.25],
  ['+1/2', 0.5],
  ['9/8', 1.125],
  ['6¼', 6.25],
  ['½', 0.5],
  ['6 125/128', 6 + 125 / 128],
])('[property] %s is %f', (text, value) => {
  expect(readNumber(text)).toEqual({ kind: 'one', value })
})

test.each(['1,234', '12,345', '-1,234', '123,456'])('[property] %s could be two numbers and is not guessed', (text) => {
  const read = readNumber(text)
  expect(read).toEqual({ kind: 'two', either: text.replace(',', ''), or: text.replace(',', '.') })
})

test.each([
  '',
  '-',
  '.',
  ',',
  '1.5 200',
  '1200 345',
  "1'200 300",
  '1  200',
  '1,234,56',
  '1.2.3',
  '4-5',
  '1/0',
  '0/0',
  '6 5/4',
  '1/2/3',
  '2e9999',
  '9'.repeat(400),
  '1e309',
  '10²',
  '٣',
  'NaN',
  'Infinity',
  '0x10',
  '1_000',
])('[limit] %s is no number', (text) => {
  expect(readNumber(text).kind).toBe('none')
})

test('[property] every finite number is read back from its own digits', () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      expect(readNumber(String(value))).toEqual({ kind: 'one', value: value + 0 }) // −0 is written 0
    }),
    { seed: 2, numRuns: 10_000 },
  )
})

test('[property] whatever is made of the characters of numbers gives a finite value, a question, or nothing', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(..."0123456789.,-+/'e ¼½\u202f"), maxLength: 24 }), (text) => {
      const read = readNumber(text)
      if (read.kind === 'one') expect(Number.isFinite(read.value)).toBe(true)
      if (read.kind === 'two') expect(Number(read.either)).toBeCloseTo(1000 * Number(read.or), 6)
    }),
    { seed: 3, numRuns: 50_000 },
  )
})

test.each([
  ['digits and a blank', '1'.repeat(100_000), ' x'],
  ['blanks', `1${' '.repeat(100_000)}`, '1'],
  ['thousands', '1 234'.padEnd(100_000, ' 234'), 'x'],
  ['commas', `1${',234'.repeat(25_000)}`, ','],
  ['points', `1${'.234'.repeat(25_000)}`, ',,'],
  ['dashes of a fraction', `1${'-'.repeat(100_000)}`, '/2'],
  ['slashes', '1/'.repeat(50_000), 'x'],
])('[limit] 100 000 characters return: %s', (_, body, tail) => {
  expect(readNumber(body + tail).kind).toBe('none')
})
