import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const files = ['apps', 'bench', 'packages', 'scripts']
  .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((path) => `${folder}/${path}`))
  .filter((path) => /\.(ts|tsx|mjs|js)$/.test(path) && !/\/(node_modules|dist|test-results)\//.test(path))
const tests = files.filter((file) => /\.(test|spec)\.ts$/.test(file))

// The opening of a test with the first character of its name: test('…, it.each(rows)('…, test(`….
const TEST = /^[ \t]*(?:test|it)(?:\.each(?:<[\s\S]*?>)?\([\s\S]*?\))?\(\s*(.[^\n]*)/gm
const TAGGED = /^['"`](\[(published|oracle|property|limit|pinned|#\d+)\])+ /

describe('tests say what kind of truth they hold', () => {
  test.each(tests)('[property] every name in %s starts with a tag', (file) => {
    const names = [...readFileSync(file, 'utf8').matchAll(TEST)].map(([, name = '']) => name)
    expect(names).not.toEqual([])
    expect(names.filter((name) => !TAGGED.test(name))).toEqual([])
  })
})

describe('tests share a process', () => {
  test('[property] none changes a module, a global, the environment or the folder', () => {
    const change = /\bvi\.|\bprocess\.(?:chdir\b|env\.\w+ =)|\bglobalThis\.\w+ =|Object\.assign\(globalThis/
    const units = tests.filter((file) => file.endsWith('.test.ts') && file !== 'scripts/tests-and-sources.test.ts')
    expect(units.filter((file) => change.test(readFileSync(file, 'utf8')))).toEqual([])
  })
})

describe('nothing is left for later', () => {
  test('[property] no source carries a reminder', () => {
    const reminder = /\b(?:TO-?DO|FIX-?ME|X{3})\b/
    expect(files.filter((file) => reminder.test(readFileSync(file, 'utf8')))).toEqual([])
  })
})
