import { execFileSync, spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'

const LAUNCHER = 'apps/cli/bin/chargewright.js'

/** Runs the built program as a shell would; after `lines` lines of output both ends are closed. */
async function chargewright(args: readonly string[], feed: (stdin: NodeJS.WritableStream) => void, lines = Infinity) {
  const child = spawn(process.execPath, [LAUNCHER, ...args], { stdio: ['pipe', 'pipe', 'pipe'] })
  child.stdin.on('error', () => undefined)
  const out: Buffer[] = []
  const err: Buffer[] = []
  let seen = 0
  child.stderr.on('data', (chunk: Buffer) => err.push(chunk))
  child.stdout.on('data', (chunk: Buffer) => {
    out.push(chunk)
    seen += chunk.filter((byte) => byte === 0x0a).length
    if (seen < lines) return
    child.stdout.destroy()
    child.stdin.end()
  })
  feed(child.stdin)
  const code = await new Promise<number | null>((resolve) => child.on('close', resolve))
  return { code, out: Buffer.concat(out).toString(), err: Buffer.concat(err).toString() }
}

const nothing = (stdin: NodeJS.WritableStream) => void stdin.end()
const QUESTION = '{"refrigerant":"R-32","temperature_K":280}\n'

beforeAll(() => {
  execFileSync('npm', ['run', 'build'], { stdio: 'ignore' })
})

describe('the built program', () => {
  test('[property] assesses a file, and passes on the exit code', async () => {
    const good = await chargewright(['assess', 'examples/orifice-hold.json'], nothing)
    expect([good.code, good.err, good.out.slice(0, 6)]).toEqual([0, '', '= hold'])
    expect((await chargewright(['assess', 'no-such-file.json'], nothing)).code).toBe(1)
    expect((await chargewright(['assess'], nothing)).code).toBe(2)
  })

  test('[property] writes a PDF with its own fonts, and loads what writes it for that alone', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'chargewright-'))
    const file = join(folder, 'record.pdf')
    const { code, out, err } = await chargewright(['report', 'examples/orifice-add.json', '-o', file], nothing)
    expect([code, out, err]).toEqual([0, `wrote ${file}\n`, ''])
    const pdf = readFileSync(file, 'latin1')
    expect(pdf).toMatch(/^%PDF-1\.7/)
    expect(pdf).toContain('AtkinsonHyperlegibleNext')
    rmSync(folder, { recursive: true })
    expect(statSync('apps/cli/dist/chargewright.js').size).toBeLessThan(1_000_000)
    expect(readFileSync('apps/cli/dist/chargewright.js', 'utf8')).not.toContain('pdfkit')
  })

  test('[property] fits a table of points', async () => {
    const file = 'examples/service/compressor-amps.csv'
    const table = ['--table', 'current A', '--rated-superheat', '20 degF']
    const found = ['--suction', '45 degF', '--discharge', '115 degF']
    const { code, out } = await chargewright(['compressor', 'rating', file, ...table, ...found, '--json'], nothing)
    expect([code, JSON.parse(out).expected.current_A > 0]).toEqual([0, true])
  })

  test('[property] answers a line as soon as it has come, while stdin stays open', async () => {
    const answer = await chargewright(['saturation', '--batch'], (stdin) => void stdin.write(QUESTION), 1)
    expect(JSON.parse(answer.out)).toMatchObject({ refrigerant: 'R-32' })
  })

  test('[property] ends a practice at its debrief, while stdin stays open', async () => {
    const { code, out } = await chargewright(['bench', '--seed', '7'], (stdin) => void stdin.write('look\ndebrief\n'))
    expect(code).toBe(0)
    expect(out).toContain('Debrief of a PRACTICE')
  })

  test('[limit] 20 000 lines go through a pipe in order, a line of 10 MB and one of broken bytes among them', async () => {
    const { code, out } = await chargewright(['saturation', '--batch'], (stdin) => {
      stdin.write(QUESTION.repeat(10_000))
      stdin.write(`"${'x'.repeat(10_000_000)}"\n`)
      stdin.write(Buffer.of(0xff, 0xfe, 0x0a))
      stdin.end(QUESTION.repeat(10_000))
    })
    const answers = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(code).toBe(0)
    expect(answers).toHaveLength(20_002)
    const errors = answers.filter((answer) => answer.error)
    expect(errors.map((answer) => answer.line)).toEqual([10_001, 10_002])
    expect([answers.indexOf(errors[0]), answers.indexOf(errors[1])]).toEqual([10_000, 10_001])
  })

  test('[limit] a reader that leaves ends it quietly', async () => {
    const { code, err } = await chargewright(
      ['saturation', '--batch'],
      (stdin) => void stdin.end(QUESTION.repeat(50_000)),
      1,
    )
    expect([code, err]).toEqual([0, ''])
  })
})
