import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { describe, expect, test } from 'vitest'

const TSX = createRequire(import.meta.url).resolve('tsx/cli')

const readmes = readdirSync('packages')
  .map((name) => `packages/${name}/README.md`)
  .filter((path) => existsSync(path))

const examplesIn = (path: string) =>
  [...readFileSync(path, 'utf8').matchAll(/```ts\n([\s\S]*?)```/g)].map(([, example = '']) => example)

/** What an example says that it prints: the comment behind each of its calls. */
const saidBy = (example: string) => [...example.matchAll(/console\.log\(.*\) \/\/ (.*)/g)].map(([, line]) => line)

// An example that prints nothing shows names only; its package has another test for it.
const examples = readmes.flatMap((path) =>
  examplesIn(path).map((example) => ({ path, example, said: saidBy(example) })),
)
const printing = examples.filter(({ said }) => said.length > 0)

describe('examples in the READMEs of packages', () => {
  test('[property] most packages show at least one that prints', () => {
    expect(new Set(printing.map(({ path }) => path)).size).toBeGreaterThan(readmes.length / 2)
  })

  test.each(printing)('[property] one in $path prints what it says', ({ path, example, said }) => {
    const run = [TSX, '--input-type=module', '--eval', example]
    const cwd = path.replace('/README.md', '')
    expect(execFileSync(process.execPath, run, { cwd, encoding: 'utf8' }).trim().split('\n')).toEqual(said)
  })
})
