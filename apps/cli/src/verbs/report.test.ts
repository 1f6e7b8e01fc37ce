import { expect, test } from 'vitest'
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
