import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { afterAll, describe, expect, test } from 'vitest'
import { scriptedTerminal } from '../../test/scripted-terminal.ts'
import { run } from '../cli.ts'

const VISIT = 'examples/orifice-add.json'
const BOOK = 'examples/service/cylinder-book.json'
const LOG = 'examples/service/vacuum-rises.csv'
const READINGS = ['0 h, 300 psig, 90 degF', '6 h, 291 psig, 75 degF', '12 h, 283 psig, 60 degF']

async function report(...flags: readonly string[]) {
  const terminal = scriptedTerminal()
  const code = await run(['report', VISIT, ...flags, '--json'], terminal)
  return { code, record: JSON.parse(terminal.out) }
}

/** What the verb of the check itself answers. */
async function verb(...words: readonly string[]) {
  const terminal = scriptedTerminal()
  expect(await run([...words, '--json'], terminal)).toBe(0)
  return JSON.parse(terminal.out)
}

test.each([
  ['inch-pound', 'micron', ' lb'],
  ['metric', 'Pa', ' kg'],
])('[property] the checks say what their verbs say, in %s units', async (system, vacuum, mass) => {
  const units = ['--units', system]
  const { record } = await report('--pressure-test', ...READINGS, '--evacuation', LOG, '--cylinders', BOOK, ...units)
  const [test, evacuated, ...cylinders] = record.checks
  const [tested, vacuumed, book] = [
    await verb('pressure-test', ...READINGS, ...units),
    await verb('evacuation', LOG, ...units),
    await verb('cylinders', BOOK, ...units),
  ]
  expect(test).toMatchObject({ title: 'Standing pressure test', verdict: 'no leak seen', sentence: tested.sentence })
  expect(test.reasons.at(-1).text).toContain(tested.readings[0].sentence)
  expect(evacuated).toMatchObject({ title: 'Evacuation', verdict: 'held', sentence: vacuumed.sentence })
  expect(evacuated.sentence).toContain(vacuum)
  expect(evacuated.reasons[0].text).toBe(vacuumed.reasons[0].text)
  expect(cylinders).toMatchObject([
    { title: 'Cylinder demo N-3, new R-410A', verdict: 'adds up', reasons: [] },
    {
      title: 'Cylinder demo R-7, recovered R-22',
      verdict: 'to be cleared up',
      sentence: expect.stringContaining(mass),
      reasons: [{ text: book.findings[0].text }],
    },
  ])
})

test('[property] without a flag of theirs there are no checks', async () => {
  expect((await report()).record).not.toHaveProperty('checks')
})

describe('of a visit that added refrigerant and read supply and compressor', () => {
  const folder = mkdtempSync(`${tmpdir()}/chargewright-`)
  afterAll(() => rmSync(folder, { recursive: true }))
  const compressorRating = readFileSync('examples/service/compressor-coefficients.csv', 'utf8')
  const facts = { refrigerant: 'R-410A', application: 'medium-temperature', nameplateCharge: '60 lb', compressorRating }

  /** The path of a visit file that says all this. */
  function visitFile(day: string, ...others: readonly object[]) {
    const events = [{ kind: 'system-described', facts }, ...others].map((fact, i) => ({
      id: `e${i}`,
      at: `${day}T10:00:00Z`,
      ...fact,
    }))
    const path = `${folder}/${day}.json`
    writeFileSync(path, JSON.stringify({ format: 'chargewright-visit', version: 1, id: day, events }))
    return path
  }
  const added = (mass: string) => ({
    kind: 'refrigerant-moved',
    direction: 'into-system',
    mass,
    phase: 'vapour',
    port: 'suction',
    compressor: 'running',
  })
  const read = (what: string, value: string) => ({ kind: 'reading', what, value })
  const first = visitFile('2026-01-06', added('3 lb'))
  const second = visitFile(
    '2026-02-05',
    read('suction-pressure', '130 psig'),
    read('liquid-pressure', '364 psig'),
    read('compressor-power', '900 W'),
    { kind: 'supply-measured', voltages: ['500 V', '420 V', '460 V'], nominal: '460 V' },
    added('5 lb'),
  )

  async function checks(...flags: readonly string[]) {
    const terminal = scriptedTerminal()
    expect(await run(['report', second, ...flags, '--json'], terminal)).toBe(0)
    const told: readonly { title: string; verdict: string; sentence: string }[] = JSON.parse(terminal.out).checks
    return told.map(({ title, verdict }) => `${title.replace(/, .*/, '')}: ${verdict}`)
  }

  test('[property] their verdicts stand in the record', async () => {
    expect(await checks()).toEqual([
      'Supply: do not run it',
      'Compressor power: below the band',
      expect.stringMatching(/^Leak rate: /),
    ])
  })

  test('[property] the leak rate counts what earlier visits added', async () => {
    // 5 lb of 60 lb in 30 days are 101 % a year.
    expect((await checks('--earlier', first)).at(-1)).toBe('Leak rate: over the threshold')
  })

  test('[limit] an earlier visit that cannot be read is refused by its place', async () => {
    const { code, record } = await report('--earlier', first, BOOK)
    expect(code).toBe(1)
    expect(record.error.field).toMatch(/^earlier visit 2, /)
  })
})

test.each([
  [['--evacuation', 'no-such-file.csv'], 1, 'vacuum log'],
  [['--evacuation', VISIT], 1, 'evacuation, line 2, time'],
  [['--cylinders', LOG], 1, 'cylinder book'],
  [['--cylinders', VISIT], 1, 'cylinders, '],
  [['--pressure-test', '0 h, 300 psig, 90 degF'], 2, 'pressure-test, readings'],
  [['--pressure-test', '0 h, 300 psig, 90 degF', '12 h'], 1, 'pressure-test, reading 2'],
])('[limit] a check that cannot be made is refused: %s', async (flags, exitCode, field) => {
  const { code, record } = await report(...flags)
  expect(code).toBe(exitCode)
  expect(record.error.field).toContain(field)
})

test('[limit] a folder that is not there is said so', async () => {
  const terminal = scriptedTerminal()
  expect(await run(['report', VISIT, '-o', 'no/such/folder/record.pdf'], terminal)).toBe(1)
  expect(terminal.err).toContain('there is no such folder')
})
