import { readdirSync, readFileSync } from 'node:fs'
import { beforeAll, describe, expect, test } from 'vitest'
import { run } from '../src/cli.ts'
import { EXIT_CODES } from '../src/failure.ts'
import { EXAMPLES } from '../src/help-examples.ts'
import { scriptedTerminal } from './scripted-terminal.ts'

const readme = readFileSync('README.md', 'utf8')
const manual = readFileSync('docs/cli.md', 'utf8')
const examples = readdirSync('examples').filter((file) => file.endsWith('.json'))

async function printed(...args: readonly string[]): Promise<string> {
  const terminal = scriptedTerminal()
  expect(await run(args, terminal)).toBe(0)
  return terminal.out
}

/** The commands that a document shows, in words. */
const commandsOf = (document: string): readonly (readonly string[])[] =>
  [...document.matchAll(/^npx chargewright (.*)$/gm)].map(([, command = '']) =>
    [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? ''),
  )

describe('the README', () => {
  test('[property] shows what the program prints', async () => {
    const [, command = '', shown = ''] = /\n\$ npx chargewright ([^\n]*)\n([\s\S]*?)\n```/.exec(readme) ?? []
    expect(shown).not.toBe('')
    expect((await printed(...command.split(' '))).startsWith(`${shown}\n`)).toBe(true)
  })

  const rows = [...readme.matchAll(/^\| \[[^\]]*\]\((examples\/[^)]*)\) *\|.*\| *([a-z ]+?) *\|$/gm)]

  test.each(rows.map(([, file = '', finding = '']) => [file, finding]))(
    '[property] says of %s what the program finds: %s',
    async (file, finding) => {
      expect(JSON.parse(await printed('assess', file, '--json')).finding.word).toBe(finding)
    },
  )

  test('[property] has a visit for every finding', () => {
    const findings = new Set(rows.map(([, , finding]) => finding))
    expect([...findings].toSorted()).toEqual(['add', 'cannot tell', 'hold', 'not ready', 'not the charge', 'recover'])
  })
})

describe('docs/cli.md', () => {
  const keys = new Set<string>()
  const numbers: [string, unknown][] = []

  /** Objects whose keys are names of components, values or measures: not the manual's to list. */
  const FREE_NAMES = ['components', 'liquid_components', 'sources', 'measures', 'memory']

  function collect(value: unknown): void {
    if (Array.isArray(value)) value.forEach(collect)
    else if (typeof value === 'object' && value !== null) {
      for (const [key, part] of Object.entries(value)) {
        keys.add(key)
        if (typeof part === 'number') numbers.push([key, part])
        if (!FREE_NAMES.includes(key)) collect(part)
        if (key === 'measures') numbers.push(...Object.entries(part as object))
      }
    }
  }

  beforeAll(async () => {
    for (const file of examples) collect(JSON.parse(await printed('assess', `examples/${file}`, '--json')))
    collect(JSON.parse(await printed('saturation', 'R-407C', '--temperature', '5 °C', '--json')))
    collect(JSON.parse(await printed('state', 'R-410A', '--pressure', '8 bar', '--temperature', '20 °C', '--json')))
    collect(JSON.parse(await printed('state', 'R-410A', '--pressure', '8 bar', '--quality', '0.5', '--json')))
    collect(
      JSON.parse(await printed('leak', 'R-407C', '--lost', '90 %', '--at', '25 °C', '--top-up-to', '1', '--json')),
    )
    collect(JSON.parse(await printed('list', '--json')))
    for (const words of commandsOf(manual)) {
      // The record is a document of its own form.
      if (words[0] !== 'report') collect(JSON.parse(await printed(...words)))
    }
  })

  test('[property] names every key that is printed', () => {
    const documented = [...manual.matchAll(/`([a-z][\w…]*)`/gi)].map(([, key = '']) => key)
    const isDocumented = (key: string) =>
      documented.some((name) => name === key || (name.endsWith('…') && key.startsWith(name.slice(0, -1))))
    // An uncertainty is that of the value whose name it bears.
    const undocumented = [...keys].filter((key) => !isDocumented(key.replace('_standard_uncertainty', '')))
    expect(undocumented.filter((key) => !isDocumented(key))).toEqual([])
  })

  test('[property] holds its word that every number names its unit', () => {
    const unitless = new Set(
      'quality gwp gwp_AR4 gwp_AR5 gwp_AR6 lost liquid_gone_at diameters cop sets misfit seed distance degrees_of_freedom'.split(
        ' ',
      ),
    )
    const units = /_(Pa|Pa_gauge|K|kg|m|kg_m|m3|m3_s|m3_sW|W|A|V|fraction|s|Pa_s|kg_s|days|J_kg|J_kgK|kg_m3|m_s)$/
    expect(numbers.filter(([key]) => !unitless.has(key) && !units.test(key))).toEqual([])
    expect(numbers.filter(([, value]) => !Number.isFinite(value))).toEqual([])
  })

  test('[property] gives the exit codes in the words of the help', () => {
    const words = Object.entries(EXIT_CODES).map(
      ([code, meaning]) => new RegExp(`^\\| ${code} +\\| ${meaning} *\\|$`, 'm'),
    )
    expect(words.filter((line) => !line.test(manual))).toEqual([])
  })

  test('[property] describes the error that is printed', async () => {
    const shown = JSON.parse(/```json\n(\{\s*"error"[\s\S]*?)```/.exec(manual)?.[1] ?? '{}')
    const terminal = scriptedTerminal()
    expect(await run(['saturation', 'R-410A', '--pressure', '20000000 Pa a', '--json'], terminal)).toBe(1)
    const { error } = JSON.parse(terminal.out)
    expect(Object.keys(error)).toEqual(Object.keys(shown.error))
    expect(error).toMatchObject({ kind: 'out-of-range', field: 'pressure', value: 20_000_000, unit: 'Pa' })
  })

  test.each(commandsOf(manual).map((words) => [words.join(' '), words] as const))(
    '[property] its example works: chargewright %s',
    async (_, words) => {
      expect(JSON.parse(await printed(...words))).not.toHaveProperty('error')
    },
  )

  test('[property] and the README name every verb', () => {
    const verbs = Object.keys(EXAMPLES)
    expect(verbs.filter((verb) => !new RegExp(`^\\| \`${verb}`, 'm').test(manual))).toEqual([])
    expect(verbs.filter((verb) => !readme.includes(`\`${verb}\``))).toEqual([])
  })
})

test('[property] examples/service/README.md lists every file beside it', () => {
  const listed = readFileSync('examples/service/README.md', 'utf8').matchAll(/^\| `([^`]*)`/gm)
  const files = readdirSync('examples/service').filter((name) => name !== 'README.md')
  expect([...listed].map(([, name]) => name).toSorted()).toEqual(files.toSorted())
})
