import { boxRegion, type Compressor, type Operating, type RatingPolynomial, toKelvin } from '@chargewright/compressor'
import { INCH_POUND, METRIC, quantity } from '@chargewright/quantity'
import { type EvacuationFinding, judgeEvacuation, type PressureLog, readPressureLog } from '@chargewright/tightness'
import { describe, expect, test } from 'vitest'
import { compressorCurve, DESK, evacuationCurve, PHONE, type Picture } from '../src/index.ts'
import { textsOf, unclosed } from './drawn.ts'

const words = ({ svg }: Picture) => textsOf(svg).map((text) => text.words)

function expectWhole({ svg, table }: Picture, width: number) {
  expect(unclosed(svg)).toEqual([])
  expect(svg).not.toMatch(/NaN|undefined|Infinity/)
  for (const row of table.rows) expect(row).toHaveLength(table.head.length)
  for (const { words, left, right } of textsOf(svg)) {
    expect([words, left >= -0.02 && right <= width + 0.02]).toEqual([words, true])
  }
}

describe('vacuum', () => {
  test.each([
    ['moisture levels off', (t: number) => 250 + 412 * (1 - Math.exp(-t / 9)), 'moisture: levels off'],
    ['a leak rises straight', (t: number) => 240 + 7 * t, 'leak: a straight rise'],
    ['both', (t: number) => 240 + 3 * t + 200 * (1 - Math.exp(-t / 12)), 'leak and moisture'],
    ['a tight system holds', (t: number) => 240 + (t % 10 === 0 ? 1 : -1), 'holds'],
  ] as const)('[property] %s: the curve says so, and the words are those of the finding', (_, pressure, name) => {
    const [log, finding] = judged(Array.from({ length: 25 }, (_, i) => [4 * i, pressure(4 * i)]))
    for (const sheet of [DESK, PHONE]) {
      const picture = evacuationCurve(log, finding, INCH_POUND, sheet)
      expectWhole(picture, sheet.width)
      expect(words(picture)).toEqual(expect.arrayContaining(['pressure, micron', 'limit 500 micron', name]))
      expect(words(picture).includes('leak alone')).toBe(name === 'leak and moisture')
      expect(picture.table.rows).toHaveLength(25)
    }
  })

  test('[limit] a log too short to be fitted is drawn as it was read', () => {
    const [log, finding] = judged([
      [0, 250],
      [5, 300],
    ])
    const picture = evacuationCurve(log, finding, METRIC)
    expectWhole(picture, DESK.width)
    expect(picture.table.head).toEqual(['minutes', 'pressure'])
    expect(words(picture)).toContain('pressure, Pa a')
  })
})

describe('compressor', () => {
  test('[property] the point stands against the curve of its own suction, and its label out of the way', () => {
    for (const [amps, described] of [
      [9, 'Measured 9.0 ± 0.2 A, expected 11.0'],
      [14, 'Measured 14.0 ± 0.2 A, expected 11.0'],
    ] as const) {
      const picture = compressorCurve(COMPRESSOR, AS_FOUND, { what: 'current', si: amps, u: 0.1 }, INCH_POUND)!
      expectWhole(picture, DESK.width)
      expect(picture.description).toContain(described)
      expect(words(picture)).toEqual(expect.arrayContaining(['current, A', '45° suction', '34°', '56°']))
    }
  })

  test('[limit] beyond the maker’s figures there is no curve', () => {
    const beyond = { ...AS_FOUND, dischargeDew: at(170) }
    expect(compressorCurve(COMPRESSOR, beyond, { what: 'current', si: 9, u: 0.1 }, METRIC)).toBeUndefined()
    expect(compressorCurve(COMPRESSOR, AS_FOUND, { what: 'power', si: 900, u: 9 }, METRIC)).toBeUndefined()
  })
})

function judged(rows: readonly (readonly [minute: number, micron: number])[]): [PressureLog, EvacuationFinding] {
  const log = readPressureLog(`min, micron\n${rows.map(([t, p]) => `${t} min, ${p.toFixed(1)}`).join('\n')}`)
  if (!log.ok) throw new Error(JSON.stringify(log.error))
  const finding = judgeEvacuation(log.value, { resolution: quantity('absolute pressure', 0.133) })
  if (!finding.ok) throw new Error(JSON.stringify(finding.error))
  return [log.value, finding.value]
}

const at = (F: number) => quantity('temperature', toKelvin(F, '°F'), 0.2)

/** Invented: 11 A at 45 and 115 °F, rising with both. */
const CURRENT: RatingPolynomial = {
  what: 'current',
  unit: 'A',
  dewUnit: '°F',
  coefficients: [-1.425, 0.02, 0.1, 0, 0, 0, 0, 0, 0, 0],
  region: boxRegion([toKelvin(20, '°F'), toKelvin(60, '°F')], [toKelvin(80, '°F'), toKelvin(150, '°F')]),
}
const COMPRESSOR: Compressor = {
  ratings: [CURRENT],
  returnGas: { kind: 'superheat', superheat_K: 11 },
  motor: { voltage_V: 230, phases: 1 },
}
const AS_FOUND: Operating = {
  suctionDew: at(45),
  dischargeDew: at(115),
  gas: { kind: 'as-rated' },
  voltage: quantity('voltage', 230, 1),
}
