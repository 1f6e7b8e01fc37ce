import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

/** The packages from the ground up. One may depend on those before it only; the apps stand above them all. */
const FROM_THE_GROUND_UP = [
  'quantity',
  'refrigerant',
  'moist-air',
  'compressor',
  'cycle',
  'diagnosis',
  'visit',
  'tightness',
  'ledger',
  'charging',
  'picture',
  'report',
]

const PREFIX = '@chargewright/'
const packages = readdirSync('packages', { withFileTypes: true })
  .filter((e) => e.isDirectory())
  .map((e) => e.name)
const apps = readdirSync('apps', { withFileTypes: true })
  .filter((e) => e.isDirectory())
  .map((e) => e.name)

describe('imports run downwards', () => {
  test('[property] every package has its place in the order', () => {
    expect(packages.toSorted()).toEqual(FROM_THE_GROUND_UP.toSorted())
  })

  test.each(packages)('[property] %s depends on packages below it only', (name) => {
    const below = FROM_THE_GROUND_UP.slice(0, FROM_THE_GROUND_UP.indexOf(name))
    expect(below).toEqual(expect.arrayContaining(dependenciesOf(`packages/${name}`)))
  })

  test.each(apps)('[property] the app %s depends on packages and on no other app', (name) => {
    expect(packages).toEqual(expect.arrayContaining(dependenciesOf(`apps/${name}`)))
  })

  test.each(packages)('[property] the linter lets %s import what it declares and nothing else', (name) => {
    expect(allowedByLinter(name)).toEqual(dependenciesOf(`packages/${name}`))
  })
})

/** Names, without scope and in order, of the workspace packages that a folder declares. */
function dependenciesOf(folder: string): string[] {
  const { dependencies = {} } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'))
  return Object.keys(dependencies)
    .filter((name) => name.startsWith(PREFIX))
    .map((name) => name.slice(PREFIX.length))
    .toSorted()
}

interface Override {
  readonly includes: readonly string[]
  readonly linter: {
    readonly rules: {
      readonly style?: { readonly noRestrictedImports?: { options: { patterns: readonly { group: string[] }[] } } }
    }
  }
}

/** What the import rule of a package excepts from its ban on everything; undefined when it has no rule. */
function allowedByLinter(name: string): string[] | undefined {
  const { overrides }: { overrides: readonly Override[] } = JSON.parse(readFileSync('biome.json', 'utf8'))
  const rules = overrides.filter((o) => o.includes.includes(`packages/${name}/src/**`)).map((o) => o.linter.rules)
  const [ban, ...exceptions] =
    rules.find((r) => r.style?.noRestrictedImports)?.style?.noRestrictedImports?.options.patterns[0]?.group ?? []
  if (ban !== `${PREFIX}**`) return undefined
  return exceptions.map((pattern) => pattern.slice(`!${PREFIX}`.length)).toSorted()
}
