import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const decisions = readdirSync('docs/decisions').map((file) => readFileSync(`docs/decisions/${file}`, 'utf8'))
const manifests = ['package.json', ...['apps', 'packages'].flatMap(manifestsIn)]

const dependencies = manifests.flatMap((file) => {
  const { dependencies = {}, devDependencies = {} } = JSON.parse(readFileSync(file, 'utf8'))
  return Object.keys({ ...dependencies, ...devDependencies })
})

/** Our own packages, and types that only describe what another one brings. */
const isOwnOrTypes = (name: string) => name.startsWith('@chargewright/') || name.startsWith('@types/')

test.each([...new Set(dependencies)].filter((name) => !isOwnOrTypes(name)))(
  '[property] a note in docs/decisions says why %s is used',
  (name) => {
    expect(decisions.some((note) => note.includes(name))).toBe(true)
  },
)

function manifestsIn(folder: string): string[] {
  const entries = readdirSync(folder, { withFileTypes: true })
  return entries.filter((entry) => entry.isDirectory()).map((entry) => `${folder}/${entry.name}/package.json`)
}
