import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const PACKAGE = new URL('..', import.meta.url)

test('[property] the example in the README prints what it says', () => {
  const readme = readFileSync(new URL('README.md', PACKAGE), 'utf8')
  const [, example = ''] = /```ts\n([\s\S]*?)```/.exec(readme) ?? []
  const said = [...example.matchAll(/console\.log\(.*\) \/\/ (.*)/g)].map(([, line]) => line)
  const run = ['--import', 'tsx', '--input-type=module', '--eval', example]
  expect(said.length).toBeGreaterThan(1)
  expect(execFileSync(process.execPath, run, { cwd: PACKAGE, encoding: 'utf8' }).trim().split('\n')).toEqual(said)
}, 20_000)
