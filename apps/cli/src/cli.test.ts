import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { scriptedTerminal } from '../test/scripted-terminal.ts'
import { run } from './cli.ts'
import { EXAMPLES } from './help-examples.ts'

async function chargewright(args: readonly string[], stdin = '') {
  const terminal = scriptedTerminal(stdin)
  const code = await run(args, terminal)
  return { code, out: terminal.out, err: terminal.err }
}

/** Records are written into a folder of the test's own. */
const folder = mkdtempSync(join(tmpdir(), 'chargewright-'))
const intoFolder = (word: string) => (/^(record|chart)\.(pdf|csv|svg)$/.test(word) ? join(folder, word) : word)
afterAll(() => rmSync(folder, { recursive: true }))

const ADD = 'examples/orifice-add.json'
const SYSTEM = 'examples/service/system.json'

describe('exit codes', () => {
  test.each([
    [['--help'], 0],
    [['--version'], 0],
    [['help', 'assess'], 0],
    [['list', 'R-32'], 0],
    [['assess', ADD], 0],
    [['twin', SYSTEM], 0],
    [['chart', SYSTEM], 0],
    [['dose', ADD], 0],
    [['bench'], 0],
    [['saturation', 'R-22', '--pressure', '69 psig'], 0],
    [['saturation', 'R-22', '--temperature', '-40 °C'], 0],
    [['assess', 'no-such-file.json'], 1],
    [['assess', 'package.json'], 1],
    [['saturation', 'R-99999', '--pressure', '69 psig'], 1],
    [['saturation', 'R-22', '--pressure', '69'], 1],
    [['saturation', 'R-22', '--pressure', '9000 psig'], 1],
    [['saturation', 'R-22', '--temperature', '40 degF', '--altitude', '90 km'], 1],
    [['state', 'R-22', '--pressure', '69 psig', '--quality', 'half'], 1],
    [['list', 'R-99999'], 1],
    [['airflow', 'heat', '--volts', '240V', '--amps', '28A', '--rise', '2'], 1],
    [['airflow', 'traverse', '--width', '20 in', '--height', '12 in', '600', '610'], 1],
    [['airflow', 'fan-table', 'package.json', '--static', '0.5 inH2O'], 1],
    [['compressor', 'rating', 'package.json', '--suction', '45 degF', '--discharge', '115 degF'], 1],
    [['compressor', 'supply', '460 V', '460 V', '--nominal', '460 V'], 1],
    [['evacuation', 'package.json'], 1],
    [['pressure-test', '0 h, 300 psig, 90 degF', '12 h, 283, 60 degF'], 1],
    [['weigh-in', '--refrigerant', 'R-22', '--nameplate-charge', '6'], 1],
    [['weigh-in', 'package.json'], 1],
    [['cylinders', 'package.json'], 1],
    [['leak-rate', 'no-such-file.json'], 1],
    [['report', ADD, '-o', 'no-such-folder/record.pdf'], 1],
    [['report', 'package.json', '--csv', 'record.csv'], 1],
    [['twin', 'package.json'], 1],
    [['twin', SYSTEM, '--what-if', 'moon'], 1],
    [['chart', 'examples/receiver-bubbles-under-load.json'], 1],
    [['chart', SYSTEM, '--svg', 'no-such-folder/chart.svg'], 1],
    [['dose', 'package.json'], 1],
    [['bench', '--seed', '0'], 1],
    [[], 2],
    [['weigh'], 2],
    [['assess'], 2],
    [['assess', ADD, '--units', 'furlongs'], 2],
    [['assess', ADD, '--colour'], 2],
    [['saturation', '--pressure', '69 psig'], 2],
    [['saturation', 'R-22'], 2],
    [['saturation', 'R-22', '--pressure', '69 psig', '--temperature', '40 degF'], 2],
    [['saturation', 'R-22', '--batch'], 2],
    [['saturation', '--batch', '--pressure', '69 psig'], 2],
    [['state', 'R-22', '--pressure', '69 psig'], 2],
    [['airflow', 'heat', '--volts', '240V', '--amps', '28A'], 2],
    [['airflow', 'traverse', '--width', '20 in'], 2],
    [['airflow', 'guess'], 2],
    [['compressor', 'rating', '--suction', '45 degF', '--discharge', '115 degF'], 2],
    [['evacuation'], 2],
    [['pressure-test', '0 h, 300 psig, 90 degF'], 2],
    [['weigh-in'], 2],
    [['weigh-in', ADD, '--refrigerant', 'R-22'], 2],
    [['cylinders'], 2],
    [['leak-rate'], 2],
    [['report', ADD], 2],
    [['twin'], 2],
    [['chart', SYSTEM, '--measure', 'pressure'], 2],
    [['dose'], 2],
    [['bench', '--device', 'magic'], 2],
    [['report', '-o', 'record.pdf'], 2],
  ])('[property] %j ends with %i', async (args, code) => {
    const ended = await chargewright(args)
    expect(ended.code).toBe(code)
    // An answer goes to stdout alone, a refusal to stderr alone.
    expect(code === 0 ? ended.err : ended.out).toBe('')
    expect(code === 0 ? ended.out : ended.err).not.toBe('')
  })
})

describe('what cannot be asked', () => {
  test.each([[['assess', ADD, '--colour']], [['saturation', 'R-22', '69 psig']], [['weigh']]])(
    '[property] %j is answered with where help is',
    async (args) => {
      expect((await chargewright(args)).err).toContain('chargewright VERB --help')
    },
  )
})

describe('--json', () => {
  test('[property] prints the problem as an object on stdout and as a sentence on stderr', async () => {
    const { code, out, err } = await chargewright(['saturation', 'R-22', '--pressure', '9000 psig', '--json'])
    expect(code).toBe(1)
    expect(JSON.parse(out)).toMatchObject({ error: { kind: 'out-of-range', field: 'pressure', unit: 'Pa' } })
    expect(err).toMatch(/^chargewright: pressure: .*psia/)
  })

  test('[property] tells every problem of a visit file by its path', async () => {
    const { out } = await chargewright(['assess', '-', '--json'], '{"format": "chargewright-visit", "events": [{}]}')
    const { error, others } = JSON.parse(out)
    const fields = [error, ...others].map(({ field }) => field)
    expect(fields).toEqual(expect.arrayContaining(['version', 'id', 'events[0].kind']))
  })
})

describe('--batch', () => {
  test('[property] answers line by line, in order, and goes on after a bad one', async () => {
    const lines = [
      '{"refrigerant": "R-32", "temperature_K": 280}',
      'not JSON',
      '',
      '{"refrigerant": "R-32", "temperature_K": 9999}',
      '{"refrigerant": "R-410A", "pressure_Pa": 1000000}',
    ]
    const { code, out, err } = await chargewright(['saturation', '--batch'], lines.join('\r\n'))
    const answers = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(code).toBe(0)
    expect(answers).toMatchObject([
      { refrigerant: 'R-32', dew: { temperature_K: expect.closeTo(280, 9) } },
      { line: 2, error: { field: 'line', value: 'not JSON' } },
      { line: 4, error: { field: 'temperature', value: 9999, unit: 'K' } },
      { refrigerant: 'R-410A', bubble: { pressure_Pa: expect.closeTo(1e6, 3) } },
    ])
    expect(err).toContain('2 of 4 lines')
  })

  test('[property] list and state answer in the keys of --json', async () => {
    const listed = await chargewright(['list', '--batch'], '{"refrigerant": "R-32"}')
    const single = await chargewright(['list', 'R-32', '--json'])
    expect([JSON.parse(listed.out)]).toEqual(JSON.parse(single.out))
    const state = '{"refrigerant": "R-32", "pressure_Pa": 1000000, "temperature_K": 300}'
    const { out } = await chargewright(['state', '--batch'], state)
    expect(JSON.parse(out)).toMatchObject({
      refrigerant: 'R-32',
      phase: 'vapour',
      pressure_Pa: 1e6,
      temperature_K: 300,
    })
  })
})

describe('--batch of a verb that asks a file', () => {
  test.each([
    ['cylinders', 'examples/service/cylinder-book.json'],
    ['leak-rate', 'examples/service/leak-history-r22.json'],
    ['weigh-in', 'examples/line-set-weigh-in.json'],
  ])('[property] %s answers a file a line as it does alone, and a bad line with its problem', async (verb, path) => {
    const line = JSON.stringify(JSON.parse(readFileSync(path, 'utf8')))
    const { code, out } = await chargewright([verb, '--batch'], `${line}\n{}\n`)
    const [answer = '', refused = ''] = out.split('\n')
    expect(code).toBe(0)
    expect(JSON.parse(answer)).toEqual(JSON.parse((await chargewright([verb, path, '--json'])).out))
    expect(JSON.parse(refused)).toMatchObject({ line: 2, error: { kind: 'missing', field: 'format' } })
  })
})

const examples = Object.values(EXAMPLES).flatMap((text) => text.split('\n').filter((line) => /^ {2}\S/.test(line)))

test.each(examples)('[property] the example of the help works: %s', async (example) => {
  const [command = '', piped] = example.split(' | ').toReversed()
  const stdin = piped === undefined ? '' : (/^ *echo '(.*)'$/.exec(piped)?.[1] ?? '')
  const words = [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '')
  const { code, out } = await chargewright(words.slice(1).map(intoFolder), stdin)
  expect(code).toBe(0)
  expect(out).not.toContain('"error"')
})

describe('report', () => {
  test('[property] writes PDF and table where it was told, and says so', async () => {
    const [pdf, csv] = [intoFolder('record.pdf'), intoFolder('record.csv')]
    const { out } = await chargewright(['report', ADD, '-o', pdf, '--csv', csv])
    expect(out).toBe(`wrote ${pdf}\nwrote ${csv}\n`)
    expect(readFileSync(pdf, 'latin1')).toMatch(/^%PDF-1\.7.*D:20260701120000Z/s)
    expect(readFileSync(csv, 'utf8')).toContain('2026-07-01T12:00:00Z')
  })

  test('[property] carries what the file says about itself, and the time when it was made', async () => {
    const { out } = await chargewright(['report', ADD, '--json'])
    expect(JSON.parse(out)).toMatchObject({
      format: 'chargewright-record',
      created: '2026-07-01T12:00:00Z',
      visit: { about: expect.stringContaining('Invented') },
      finding: { kind: 'add' },
    })
  })
})
