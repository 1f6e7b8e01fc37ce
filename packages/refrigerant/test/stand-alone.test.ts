import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { publint } from 'publint'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildPackage } from '../scripts/build-package.ts'

/** Somebody else's folder, with this package in it and nothing else of the repository. */
const stranger = mkdtempSync(join(tmpdir(), 'stranger-'))
const installed = join(stranger, 'node_modules/@chargewright/refrigerant')
const binaries = join(import.meta.dirname, '../../../node_modules/.bin')
const compiler = join(binaries, 'tsc')

beforeAll(async () => {
  mkdirSync(installed, { recursive: true })
  writeFileSync(join(stranger, 'package.json'), '{ "type": "module" }')
  await buildPackage(installed)
}, 60_000)
afterAll(() => rmSync(stranger, { recursive: true }))

describe('the package on its own', () => {
  it('[property] has no dependency and packs what it needs, nothing else', () => {
    const manifest = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as Record<string, unknown>
    expect(Object.keys(manifest).filter((key) => /dependencies/i.test(key))).toEqual([])
    expect(readFileSync(join(installed, 'index.js'), 'utf8')).not.toMatch(/^import |require\(/m)
    const packed = JSON.parse(
      execFileSync('npm', ['pack', '--dry-run', '--json'], { cwd: installed, encoding: 'utf8' }),
    ) as [{ files: { path: string }[] }]
    const paths = packed[0].files.map(({ path }) => path).filter((path) => !path.startsWith('types/'))
    expect(paths.sort()).toEqual(['LICENSE', 'README.md', 'docs/leak.svg', 'index.js', 'package.json', 'sources.bib'])
  }, 30_000)

  it('[property] satisfies publint', async () => {
    const { messages } = await publint({ pkgDir: installed, strict: true })
    expect(messages).toEqual([])
  }, 30_000)

  it('[property] packed, resolves to its types under Node and bundlers (attw); only require() cannot load a module', () => {
    const tarball = execFileSync('npm', ['pack', '--silent', '--offline', '--pack-destination', stranger], {
      cwd: installed,
      encoding: 'utf8',
    })
    const options = ['--profile', 'esm-only', '--format', 'json', join(stranger, tarball.trim())]
    const { problems } = JSON.parse(execFileSync(join(binaries, 'attw'), options, { encoding: 'utf8' })) as {
      problems: Readonly<Record<string, unknown>>
    }
    expect(Object.keys(problems)).toEqual(['CJSResolvesToESM'])
  }, 30_000)

  it('[property] runs in plain Node', () => {
    const program = `
      import { findRefrigerant, kelvin, pascal, stateAt } from '@chargewright/refrigerant'
      const found = findRefrigerant('propane')
      const state = stateAt(found.value, pascal(1e5), kelvin(300))
      console.log(state.value.phase)`
    const said = execFileSync(process.execPath, ['--input-type=module', '--eval', program], {
      cwd: stranger,
      encoding: 'utf8',
    })
    expect(said.trim()).toBe('vapour')
  })

  it('[property] tells a stranger’s compiler its types, and that a plain number is no pressure', () => {
    writeFileSync(
      join(stranger, 'use.ts'),
      `import { findRefrigerant, kelvin, pascal, type State, stateAt } from '@chargewright/refrigerant'
      const found = findRefrigerant('R-32')
      if (!found.ok) throw new Error(found.error.field)
      const state = stateAt(found.value, pascal(1e6), kelvin(300))
      if (state.ok) state.value satisfies State
      // @ts-expect-error
      stateAt(found.value, 1e6, kelvin(300))`,
    )
    const options = ['--noEmit', '--strict', '--module', 'nodenext', '--target', 'es2022', '--types', '', 'use.ts']
    expect(execFileSync(compiler, options, { cwd: stranger, encoding: 'utf8' })).toBe('')
  }, 30_000)
})
