import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import {
  EventSchema,
  FIGURE_IDS,
  figureKind,
  fold,
  OBSERVATION_IDS,
  observationKind,
  READING_IDS,
  readingKind,
  readVisitFile,
} from '../src/index.ts'

// Tables are padded into columns, which says nothing.
const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8').replace(/(\S) +(?=\|)/g, '$1 ')
const code = (text: string) => `\`${text}\``

test('[property] the example in the README is a visit file without a problem or a doubt', () => {
  const [, example = ''] = /```json\n([\s\S]*?)```/.exec(readme) ?? []
  const file = readVisitFile(example)
  if (!file.ok) throw new Error(JSON.stringify(file.error))
  const visit = fold(file.value)
  expect(visit.problems).toEqual([])
  expect(visit.doubts).toEqual([])
  expect(visit.readings['suction-pressure']?.typed).toBe('118 psig')
})

test('[property] the README lists every event with its fields, and marks those that may be left out', () => {
  for (const { entries } of EventSchema.options) {
    const { id, at, by, kind, ...own } = entries
    const fields = Object.entries(own).map(([name, { type }]) => `${code(name)}${type === 'exact_optional' ? '?' : ''}`)
    const row = readme.split('\n').find((line) => line.startsWith(`| ${code(kind.literal)} |`))
    expect(row?.split(' | ').at(-1)).toBe(`${fields.join(', ')} |`)
  }
})

test('[property] the README lists every figure, reading and observation as the code words it', () => {
  const rows = [
    ...FIGURE_IDS.map((id) => [code(id), figureKind(id).label, figureKind(id).example]),
    ...READING_IDS.map((id) => [code(id), readingKind(id).label, readingKind(id).tells]),
    ...OBSERVATION_IDS.map((id) => {
      const { label, answers } = observationKind(id)
      return [code(id), label, Object.keys(answers).map(code).join(', ')]
    }),
  ]
  for (const row of rows) expect(readme).toContain(`| ${row.join(' | ')} |`)
})
