import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const PACKAGE = new URL('..', import.meta.url)
const readme = readFileSync(new URL('README.md', PACKAGE), 'utf8')
const examples = [...readme.matchAll(/```ts\n([\s\S]*?)```/g)].map(([, example = '']) => example)

test('[property] the README has an example of properties, of a leak and of a table', () => {
  expect(examples).toHaveLength(3)
})

test.each(examples)(
  '[property] an example in the README prints what it says',
  (example) => {
    const said = [...example.matchAll(/console\.log\(.*\) \/\/ (.*)/g)].map(([, line]) => line)
    const run = ['--import', 'tsx', '--input-type=module', '--eval', example]
    expect(said.length).toBeGreaterThan(0)
    expect(execFileSync(process.execPath, run, { cwd: PACKAGE, encoding: 'utf8' }).trim().split('\n')).toEqual(said)
  },
  30_000,
)
