import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { COMPRESSOR, MASS_FLOW, POWER } from '../test/heat-pump-compressor.ts'
import { toKelvin } from './dew-unit.ts'
import { ratedValue } from './rating-polynomial.ts'
import { readCoefficients } from './read-coefficients.ts'

const ROWS = MASS_FLOW.coefficients.map((c, i) => `C${i + 1},${c},${POWER.coefficients[i]}`)
const FILE = [
  '°F,mass flow lb/h,power (W)',
  ...ROWS,
  'suction,30,55',
  'discharge,90,140',
  'return gas superheat,20',
  'voltage,230',
  'phases,1',
]
const text = FILE.join('\n')

test('[property] a file as makers print it is the compressor', () => {
  const { returnGas, motor } = COMPRESSOR
  expect(readCoefficients(text)).toEqual({ ok: true, value: { ratings: [MASS_FLOW, POWER], returnGas, motor } })
})

describe('the same file, written otherwise', () => {
  test.each([
    ['with tabs and line ends of another system', FILE.join('\r\n').replaceAll(',', '\t')],
    ['with semicolons and decimal commas', text.replaceAll(',', ';').replaceAll('.', ',')],
    [
      'with quotes, spaces, empty lines and a byte order mark',
      `\uFEFF${text.replaceAll('suction,30', '\n "suction" , "30"')}`,
    ],
    [
      'with true minus signs and capitals',
      text.replaceAll('-', '−').replace('suction', 'SUCTION').replace('°F', 'degF'),
    ],
    ['with its lines in another order', [FILE[0], ...FILE.slice(1).toReversed()].join('\n')],
  ])('[property] %s', (_, other) => {
    expect(readCoefficients(other)).toEqual(readCoefficients(text))
  })

  test('[property] with one return-gas temperature and no supply', () => {
    const other = text
      .replace('return gas superheat,20', 'return gas temperature,65')
      .replace('\nvoltage,230\nphases,1', '')
    const compressor = readCoefficients(other)
    expect(compressor).toMatchObject({
      ok: true,
      value: { returnGas: { kind: 'temperature', temperature_K: toKelvin(65, '°F') } },
    })
    expect(compressor.ok && 'motor' in compressor.value).toBe(false)
  })

  test('[property] °C and °F in the heading are not the same compressor', () => {
    const inC = readCoefficients(text.replace('°F', '°C').replace('90,140', '90,99'))
    const at = { suctionDew_K: toKelvin(45, '°C'), dischargeDew_K: toKelvin(95, '°C') }
    expect(inC.ok && ratedValue(inC.value.ratings[0]!, at).ok).toBe(true)
    const inF = readCoefficients(text)
    expect(inF.ok && ratedValue(inF.value.ratings[0]!, at).ok).toBe(false)
  })
})

describe('what is missing or cannot be read is named', () => {
  test.each([
    ['nothing', '', 'coefficients'],
    ['no unit of temperature', text.replace('°F', 'term'), 'first cell of the heading'],
    ['a unit of something else', text.replace('lb/h', 'W'), 'heading'],
    ['a quantity nobody rates', text.replace('power (W)', 'noise dB'), 'heading'],
    ['no columns', text.replace(',mass flow lb/h,power (W)', ''), 'heading'],
    ['nine coefficients', text.replace(/C10.*\n/, ''), 'line “c10”'],
    ['a coefficient that is a word', text.replace(String(MASS_FLOW.coefficients[3]), 'n/a'), 'line “c4”'],
    ['a column without values', text.replace(/C1,.*/, 'C1,217.3'), 'line “c1”'],
    ['no range of use', text.replace('suction,30,55\n', ''), 'line “suction”'],
    ['a range from high to low', text.replace('suction,30,55', 'suction,55,30'), 'suction, to'],
    ['no return gas', text.replace('return gas superheat,20\n', ''), 'line “return gas superheat”'],
    ['a negative superheat', text.replace('superheat,20', 'superheat,-20'), 'return gas superheat'],
    ['a voltage without phases', text.replace('\nphases,1', ''), 'line “phases”'],
    ['two phases', text.replace('phases,1', 'phases,2'), 'phases'],
    ['a voltage of nothing', text.replace('voltage,230', 'voltage,0'), 'voltage'],
    ['too much of everything', 'x'.repeat(200_001), 'coefficients'],
  ])('[limit] %s', (_, broken, field) => {
    expect(readCoefficients(broken)).toMatchObject({ ok: false, error: { field } })
  })

  test('[property] no text makes it throw', () => {
    const piece = fc.constantFrom(
      '°F',
      'mass flow lb/h',
      'C1',
      ',',
      ';',
      '\n',
      '-',
      '1e999',
      '0x10',
      '.',
      '__proto__',
      'suction',
      '5',
    )
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => !readCoefficients(pieces.join('')).ok),
      { seed: 10, numRuns: 1000 },
    )
  })
})
