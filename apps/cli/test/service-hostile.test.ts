import { readFileSync } from 'node:fs'
import { INCH_POUND, type Problem, type Result } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { airflowByDrop, airflowByFan, airflowByHeat } from '../src/commands/airflow.ts'
import { airflowJson } from '../src/commands/airflow-json.ts'
import { airflowText } from '../src/commands/airflow-text.ts'
import { airflowAcross, TRAVERSE_UNITS } from '../src/commands/airflow-traverse.ts'
import { assess } from '../src/commands/assess.ts'
import { compressor } from '../src/commands/compressor.ts'
import { compressorJson, supplyJson } from '../src/commands/compressor-json.ts'
import { compressorText, supplyText } from '../src/commands/compressor-text.ts'
import { cylinders } from '../src/commands/cylinders.ts'
import { cylindersJson } from '../src/commands/cylinders-json.ts'
import { cylindersText } from '../src/commands/cylinders-text.ts'
import { evacuation } from '../src/commands/evacuation.ts'
import { evacuationJson } from '../src/commands/evacuation-json.ts'
import { evacuationText } from '../src/commands/evacuation-text.ts'
import { leakRate } from '../src/commands/leak-rate.ts'
import { leakRateJson } from '../src/commands/leak-rate-json.ts'
import { leakRateText } from '../src/commands/leak-rate-text.ts'
import { pressureTest } from '../src/commands/pressure-test.ts'
import { pressureTestJson } from '../src/commands/pressure-test-json.ts'
import { pressureTestText } from '../src/commands/pressure-test-text.ts'
import { recordFiles } from '../src/commands/report.ts'
import { supply } from '../src/commands/supply.ts'
import { weighIn, weighInByFlags } from '../src/commands/weigh-in.ts'
import { weighInJson } from '../src/commands/weigh-in-json.ts'
import { weighInText } from '../src/commands/weigh-in-text.ts'
import { parseJson } from '../src/json-reader.ts'
import { answersOrRefuses } from './answers-or-refuses.ts'
import { damagedJson, damagedTable, flagsLike, someFlagsLike, typed, visitLine } from './hostile-values.ts'

// Some 30 000 damaged files and flags, the same in every run. None may end in anything but an answer that can be printed or
// a problem that names its field, its value and what would have been accepted.
const file = (name: string) => readFileSync(`examples/service/${name}`, 'utf8')

/** As a file is asked. */
const fromText =
  <Answer>(ask: (data: unknown) => Result<Answer, readonly Problem[]>) =>
  (text: string): Result<Answer, readonly Problem[]> => {
    const data = parseJson(text, 'file')
    return data.ok ? ask(data.value) : data
  }

describe('airflow', () => {
  const forms = { text: airflowText, json: airflowJson }
  const air = someFlagsLike({
    air: ['70 degF', '21 °C'],
    humidity: ['50 %', '60 degF', '100 % RH'],
    altitude: ['5000 ft', '0 m'],
    tons: ['3 ton', '10 kW'],
  })

  test('[property] by heat answers or refuses any flags', () => {
    const heat = flagsLike({ volts: ['240V', '208 ± 2 V'], amps: ['28A', '41 A'], rise: ['21 degF', '12 ± 0.5 K'] })
    const phases = fc.constantFrom('1', '3')
    const blower = someFlagsLike({ blower: ['450 W'] })
    const inputs = fc.tuple(heat, air, blower, phases).map(([h, a, b, p]) => ({ ...h, ...a, ...b, phases: p }))
    answersOrRefuses(inputs, airflowByHeat, forms, 4000)
  })

  test('[property] by traverse answers or refuses any readings', () => {
    const reading = fc.oneof(
      { arbitrary: fc.integer({ min: -5, max: 1500 }).map(String), weight: 99 },
      { arbitrary: typed, weight: 1 },
    )
    const counts = fc.constantFrom(12, 20, 25, 30, 0, 7)
    const readings = counts.chain((n) => fc.array(reading, { minLength: n, maxLength: n }))
    const duct = fc.oneof(
      flagsLike({ width: ['20 in'], height: ['12 in'] }),
      flagsLike({ diameter: ['14 in', '0.3 m'] }),
    )
    const units = fc.constantFrom(...TRAVERSE_UNITS)
    const inputs = fc.tuple(readings, duct, air, units)
    answersOrRefuses(inputs, ([values, d, a, unit]) => airflowAcross(values, { ...d, ...a, in: unit }), forms, 4000)
  })

  test('[property] by a table answers or refuses any table', () => {
    const drops = fc.tuple(damagedTable([file('coil-drops.csv')]), flagsLike({ drop: ['0.22 inH2O', '50 Pa'] }), air)
    answersOrRefuses(drops, ([table, own, shared]) => airflowByDrop(table, { ...own, ...shared }), forms, 3000)
    const fans = fc.tuple(damagedTable([file('fan-table.csv')]), flagsLike({ static: ['0.5 inH2O', '120 Pa'] }), air)
    answersOrRefuses(fans, ([table, own, shared]) => airflowByFan(table, { ...own, ...shared }), forms, 3000)
  })
})

describe('compressor', () => {
  const forms = { text: compressorText, json: compressorJson }
  const dews = flagsLike({ suction: ['45 degF', '7 ± 0.5 °C'], discharge: ['115 degF', '46 °C'] })
  const found = someFlagsLike({
    volts: ['222 V'],
    amps: ['9.8 A', '12 ± 0.2 A'],
    watts: ['2130 W'],
    flow: ['450 lb/h'],
  })
  const scale = { degrees: 'F', phases: '1' } as const

  test('[property] answers or refuses any coefficients', () => {
    const files = fc.oneof(damagedTable([file('compressor-coefficients.csv')]), damagedJson([file('compressor.json')]))
    answersOrRefuses(
      fc.tuple(files, dews, found),
      ([text, d, f]) => compressor(text, { ...d, ...f, ...scale }),
      forms,
      3000,
    )
  })

  test('[property] answers or refuses any table of points', () => {
    const table = flagsLike({ table: ['current A'], ratedSuperheat: ['20 degF'], ratedVolts: ['230 V'] })
    const inputs = fc.tuple(damagedTable([file('compressor-amps.csv')]), dews, found, table)
    answersOrRefuses(inputs, ([text, d, f, t]) => compressor(text, { ...d, ...f, ...t, ...scale }), forms, 2000)
  })

  test('[property] answers or refuses any curve of a system', () => {
    const air = flagsLike({ curveOf: ['power W', 'capacity Btu/h'], outdoor: ['90 degF'], box: ['75 ± 1 °F', '22 °C'] })
    const text = file('compressor-coefficients.csv')
    const inputs = fc.tuple(damagedTable([file('system-power.csv')]), dews, air)
    answersOrRefuses(inputs, ([curve, d, a]) => compressor(text, { ...d, ...a, ...scale }, curve), forms, 2000)
  })

  test('[property] answers or refuses any pressures and return gas', () => {
    const readings = flagsLike({
      suction: ['130 psig', '9 bar g'],
      discharge: ['364 psig', '25 bar g'],
      refrigerant: ['R-410A', 'R-32'],
      returnGas: ['60 degF', '65 ± 1 °F'],
    })
    const text = file('compressor.json')
    answersOrRefuses(readings, (flags) => compressor(text, { ...flags, ...scale }), forms, 500)
  })

  test('[property] supply answers or refuses any voltages', () => {
    const voltage = flagsLike({ v: ['462 V', '463 V', '455 ± 2 V', '430 V'] }).map(({ v }) => v)
    const inputs = fc.tuple(fc.array(voltage, { minLength: 1, maxLength: 3 }), voltage)
    answersOrRefuses(inputs, ([all, nominal]) => supply(all, nominal), { text: supplyText, json: supplyJson }, 2000)
  })
})

test('[property] evacuation answers or refuses any log', () => {
  const logs = damagedTable([file('vacuum-levels.csv'), file('vacuum-rises.csv')])
  const flags = someFlagsLike({
    start: ['300 micron', '40 Pa'],
    limit: ['500 micron'],
    hold: ['30 min', '1 h'],
    resolution: ['1 micron'],
    coldest: ['50 degF', '2 °C'],
    unit: ['micron', 'Pa'],
  })
  const forms = { text: evacuationText, json: evacuationJson }
  const criteria = fc.constantFrom('specification', 'habit')
  answersOrRefuses(
    fc.tuple(logs, flags, criteria),
    ([log, f, criterion]) => evacuation(log, { ...f, criterion }),
    forms,
    2000,
  )
})

test('[property] pressure-test answers or refuses any readings', () => {
  const reading = flagsLike({
    time: ['0 h', '1 h', '12 h', '24 h'],
    pressure: ['300 psig', '283 psig', '4,9 bar', '20 bar g'],
    temperature: ['90 degF', '15 °C'],
  }).map(({ time, pressure, temperature }) => `${time}, ${pressure}, ${temperature}`)
  const flags = someFlagsLike({ gaugeStep: ['1 psi'], thermometerStep: ['0.1 degF'], altitude: ['5000 ft'] })
  const forms = { text: pressureTestText, json: pressureTestJson }
  const inputs = fc.tuple(fc.array(reading, { maxLength: 4 }), flags)
  answersOrRefuses(inputs, ([readings, f]) => pressureTest(readings, f), forms, 4000)
})

test('[property] cylinders answers or refuses any book', () => {
  const books = damagedJson([file('cylinder-book.json')])
  answersOrRefuses(books, fromText(cylinders), { text: cylindersText, json: cylindersJson }, 3000)
})

test('[property] leak-rate answers or refuses any history', () => {
  const histories = damagedJson([file('leak-history-r22.json'), file('leak-history-r410a.json')])
  answersOrRefuses(histories, fromText(leakRate), { text: leakRateText, json: leakRateJson }, 4000)
})

describe('weigh-in', () => {
  const forms = { text: weighInText, json: weighInJson }

  test('[property] answers or refuses any visit', () => {
    answersOrRefuses(visitLine, fromText(weighIn), forms, 1000)
  })

  test('[property] answers or refuses any flags', () => {
    const needed = flagsLike({ refrigerant: ['R-410A', 'propane'], nameplateCharge: ['6 lb 4 oz', '500 g'] })
    const optional = someFlagsLike({
      lineLength: ['45 ft', '12 m'],
      includedLineLength: ['15 ft'],
      lineChargePerLength: ['0.6 oz/ft'],
      liquidLineTube: ['3/8', '1-1/8'],
      liquidTemperature: ['100 degF'],
      oldDrierVolume: ['8 in³'],
      newDrierVolume: ['16 in³'],
      floodingCharge: ['3 lb'],
      scaleStep: ['1 g', '0.5 oz'],
      hose: ['60 in, 0.2 in', '1.5 m, 5 mm'],
      cylinderTemperature: ['85 degF'],
      cylinderScale: ['70 degF', '21 °C'],
    })
    const device = fc.constantFrom('thermostatic', 'capillary')
    const part = flagsLike({ text: ['receiver: 2 L, 30 %', 'accumulator: 90 in³, 0.1'] }).map(({ text }) => text)
    const parts = fc.oneof(fc.constant([]), fc.array(part, { minLength: 1, maxLength: 2 }))
    const inputs = fc
      .tuple(needed, optional, device, parts)
      .map(([n, o, meteringDevice, accessory]) => ({ ...n, ...o, meteringDevice, accessory }))
    answersOrRefuses(inputs, weighInByFlags, forms, 2000)
  })
})

describe('report', () => {
  const options = { preference: INCH_POUND, created: '2026-07-01T12:00:00Z' }

  test('[property] writes table and data of any visit that can be read, with no number that is none', () => {
    fc.assert(
      fc.property(visitLine, (text) => {
        const assessed = assess(text)
        if (!assessed.ok) return
        const files = recordFiles(assessed.value, options)
        expect(JSON.stringify(files.json())).not.toMatch(/:null[,}]/)
        expect(files.csv()).toMatch(/^section,item,/)
      }),
      { seed: 62, numRuns: 1000 },
    )
  })

  test('[property] writes a PDF of any visit that can be read', async () => {
    await fc.assert(
      fc.asyncProperty(visitLine, async (text) => {
        const assessed = assess(text)
        if (!assessed.ok) return
        const bytes = await recordFiles(assessed.value, options).pdf()
        expect(Buffer.from(bytes.slice(0, 5)).toString('latin1')).toBe('%PDF-')
      }),
      { seed: 63, numRuns: 20 },
    )
  })
})
