import { readFileSync } from 'node:fs'
import { INCH_POUND } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type CompressorFlags, compressor } from './compressor.ts'
import { compressorJson } from './compressor-json.ts'
import { compressorText, supplyText } from './compressor-text.ts'
import { supply } from './supply.ts'

const CSV = readFileSync('examples/service/compressor-coefficients.csv', 'utf8')
const JSON_FILE = readFileSync('examples/service/compressor.json', 'utf8')
const TABLE = readFileSync('examples/service/compressor-amps.csv', 'utf8')
const CURVE = readFileSync('examples/service/system-power.csv', 'utf8')
const FOUND: CompressorFlags = { suction: '45 degF', discharge: '115 degF', degrees: 'F', phases: '1' }

function answer(file: string, flags: Partial<CompressorFlags> = {}, curve?: string) {
  const found = compressor(file, { ...FOUND, ...flags }, curve)
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}
const expected = (...args: Parameters<typeof answer>) =>
  Object.fromEntries(answer(...args).expected.map(({ rating }) => [rating.what, rating.si]))

describe('expected values', () => {
  // COMPUTED by hand from the coefficients of the example at 45 and 115 °F.
  test('[oracle] follow the coefficients of the file', () => {
    const values = expected(CSV)
    expect(values['mass flow']! / (0.45359237 / 3600)).toBeCloseTo(451.26, 1)
    expect(values.power).toBeCloseTo(2131.9, 0)
    expect(values.current).toBeCloseTo(9.622, 2)
  })

  test('[property] are the same from CSV and from JSON', () => {
    expect(expected(JSON_FILE).current).toBeCloseTo(expected(CSV).current!, 9)
    expect(expected(JSON_FILE).power).toBeCloseTo(expected(CSV).power!, 9)
  })

  test('[property] are the same at a pressure as at its dew temperature', () => {
    const dew = answer(JSON_FILE, { refrigerant: 'R-410A', suction: '130 psig' }).suctionDew
    const at = `${dew.si} K`
    expect(expected(JSON_FILE, { suction: at }).power).toBeCloseTo(
      expected(JSON_FILE, { refrigerant: 'R-410A', suction: '130 psig' }).power!,
      6,
    )
  })

  test('[property] change with the return gas: hotter gas is lighter', () => {
    const pumped = (returnGas: string) => expected(CSV, { refrigerant: 'R-410A', returnGas })['mass flow']!
    expect(pumped('65 degF')).toBeCloseTo(expected(CSV)['mass flow']!, 9)
    expect(pumped('85 degF')).toBeLessThan(pumped('65 degF'))
  })

  test('[property] of a table lie near its points', () => {
    const facts = { table: 'current A', ratedSuperheat: '20 degF', ratedVolts: '230 V' }
    expect(expected(TABLE, { ...facts, suction: '40 degF', discharge: '105 degF' }).current).toBeCloseTo(9.6, 0)
  })
})

describe('the measured current', () => {
  test.each([
    ['9.6 A', 'inside'],
    ['10.1 A', 'too-close'],
    ['11.2 A', 'above'],
    ['8.2 A', 'below'],
  ])('[property] %s is %s the band, and the page says what to check', (amps, side) => {
    const found = answer(CSV, { amps, volts: '230 V' })
    expect(found.judged.map(({ judgement }) => judgement.side)).toEqual([side])
    expect(compressorText(found, INCH_POUND, 80)).toContain('Check, the easiest first')
    expect(compressorJson(found, INCH_POUND)).toMatchObject({ judgements: [{ of: 'current', side }] })
  })
})

describe('measured power and mass flow', () => {
  // COMPUTED by hand: the example expects 2131.9 W and 451.26 lb/h; the band is 5 % (AHRI 540, RECALLED).
  test.each<[Partial<CompressorFlags>, string, string]>([
    [{ watts: '2130 W' }, 'power', 'inside'],
    [{ watts: '2.5 kW' }, 'power', 'above'],
    [{ watts: '1800 W' }, 'power', 'below'],
    [{ flow: '450 ± 5 lb/h' }, 'mass flow', 'inside'],
    [{ flow: '330 lb/h' }, 'mass flow', 'below'],
  ])('[oracle] %j: %s is %s the band', (flags, what, side) => {
    expect(answer(CSV, flags).judged).toMatchObject([{ what, judgement: { side } }])
  })

  test('[property] beside the amps, each is named where it lies, and nothing is said to run as rated', () => {
    const page = compressorText(answer(CSV, { watts: '2130 W', amps: '9.6 A', flow: '330 lb/h' }), INCH_POUND, 80)
    expect(page).toContain('power inside the band, current inside the band, mass flow below the band')
    expect(page).not.toContain('It runs as rated')
  })
})

describe('the curve of the whole system', () => {
  const AIR: Partial<CompressorFlags> = { curveOf: 'power W', outdoor: '90 degF', box: '75 degF' }

  // COMPUTED by hand: half-way between 2420 and 2710 W.
  test('[oracle] goes before that of the compressor, and both forms say so', () => {
    const found = answer(CSV, { ...AIR, watts: '2570 W' }, CURVE)
    expect(found.judged[0]?.judgement).toMatchObject({ side: 'inside', off: expect.closeTo(2570 / 2565 - 1, 9) })
    expect(expected(CSV, AIR, CURVE).current).toBe(expected(CSV).current)
    expect(compressorText(found, INCH_POUND, 80)).toContain('The power is that of the whole system')
    expect(compressorJson(found, INCH_POUND)).toMatchObject({
      from_system_curve: 'power',
      expected: { power_W: expect.closeTo(2565, 6) },
    })
  })

  test.each<[string | undefined, Partial<CompressorFlags>, string]>([
    [undefined, AIR, 'curve'],
    [CURVE, { ...AIR, outdoor: '120 degF' }, 'outdoor temperature'],
    [CURVE, { ...AIR, box: '75' }, 'box'],
    [CURVE, { outdoor: '90 degF', box: '75 degF' }, 'curve-of'],
    [CURVE, { ...AIR, curveOf: 'power hp' }, 'curve-of'],
    ['', AIR, 'performance curve of the system'],
  ])('[limit] %j with %j is a problem of %s', (curve, flags, field) => {
    expect(compressor(CSV, { ...FOUND, ...flags }, curve)).toMatchObject({ ok: false, error: [{ field }] })
  })
})

test.each<[Partial<CompressorFlags>, string]>([
  [{ suction: '130 psig' }, 'refrigerant'],
  [{ returnGas: '65 degF' }, 'refrigerant'],
  [{ suction: '45' }, 'suction'],
  [{ suction: '5 degF' }, 'suction dew temperature'],
  [{ volts: '110 V' }, 'measured over rated voltage'],
  [{ refrigerant: 'R-410A', returnGas: '20 degF' }, 'return gas'],
  [{ table: 'amps' }, 'table'],
  [{ watts: '2000' }, 'watts'],
  [{ flow: '7 gpm' }, 'flow'],
])('[limit] %j is a problem of %s', (flags, field) => {
  expect(compressor(CSV, { ...FOUND, ...flags })).toMatchObject({ ok: false, error: [{ field }] })
})

test('[limit] a flow is not judged by figures without one', () => {
  expect(compressor(JSON_FILE, { ...FOUND, flow: '450 lb/h' })).toMatchObject({
    error: [{ kind: 'missing', field: 'rating of the mass flow' }],
  })
})

test('[limit] a JSON file is refused by the paths of what is wrong in it', () => {
  const file = JSON.parse(JSON_FILE)
  file.ratings[0].unit = 'hp'
  file.ratings[1].coefficients.pop()
  delete file.returnSuperheat
  const refused = compressor(JSON.stringify(file), FOUND)
  const fields = refused.ok ? [] : refused.error.map(({ field }) => field)
  expect(fields).toEqual(['ratings[0].unit', 'ratings[1].coefficients', 'returnSuperheat'])
})

// Published: NEMA MG-1 as quoted: 462, 463 and 455 V have a mean of 460 V and an unbalance of 5/460, 1.1 %. READ as quoted.
test('[published] three voltages of the textbook are unbalanced by 1.1 %', () => {
  const found = supply(['462 V', '463 V', '455 V'], '460 V')
  if (!found.ok) throw new Error('refused')
  expect(found.value.unbalance?.value).toBeCloseTo(0.011, 3)
  expect(supplyText(found.value, INCH_POUND, 80)).toContain('1.1 ± 0.8 %')
})

test('[limit] two voltages, and one without its unit, are refused', () => {
  expect(supply(['462 V', '463 V'], '460 V')).toMatchObject({ error: [{ field: 'voltages' }] })
  expect(supply(['462'], '460')).toMatchObject({ error: [{ field: 'nominal' }, { field: 'voltage 1' }] })
})
