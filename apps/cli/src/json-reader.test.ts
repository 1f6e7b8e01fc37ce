import { describe, expect, test } from 'vitest'
import { choice, fields, list, number, parseJson, text, truth, typed, variant } from './json-reader.ts'

const scale = fields({ id: text, tare: typed('mass') }, { new: truth, steps: list(number, 3) })
const file = fields({ version: choice(1), scales: list(scale, 2) }, {})
const read = (data: unknown) => file(data, 'scale file')

test('[property] a whole file is read, its quantities in SI', () => {
  const data = { version: 1, scales: [{ id: 'a', tare: '1 kg ± 2 g', new: true, steps: [1, 2] }] }
  const scales = [{ id: 'a', tare: { dimension: 'mass', si: 1, u: 0.001 }, new: true, steps: [1, 2] }]
  expect(read(data)).toEqual({ ok: true, value: { version: 1, scales } })
})

test('[property] every problem is told at once, by its path', () => {
  const data = {
    version: 2,
    scales: [
      { id: '', tare: 5, colour: 'red' },
      { id: 'b', tare: '5' },
    ],
  }
  const found = read(data)
  expect(found.ok ? [] : found.error.map(({ kind, field }) => `${kind} ${field}`)).toEqual([
    'unreadable version',
    'unreadable scales[0].id',
    'unreadable scales[0].tare',
    'unknown scales[0].colour',
    'unreadable scales[1].tare',
  ])
})

describe('what is no such file', () => {
  test.each([
    [null, 'scale file'],
    ['text', 'scale file'],
    [[], 'scale file'],
    [{ version: 1 }, 'scales'],
    [{ version: 1, scales: {} }, 'scales'],
    [{ version: 1, scales: [1, 2, 3] }, 'scales'],
    [{ version: 1, scales: [null] }, 'scales[0]'],
    [JSON.parse('{"version": 1, "scales": [], "__proto__": 1}'), '__proto__'],
    [{ version: 1, scales: [], 'a b': 1 }, '["a b"]'],
    [{ version: 1, scales: [{ id: 'a', tare: '1 kg', steps: [Infinity] }] }, 'scales[0].steps[0]'],
  ])('[limit] %j is a problem of %s', (data, field) => {
    expect(read(data)).toMatchObject({ ok: false, error: [{ field }] })
  })
})

test('[limit] a kind that is not known, or not said, is a problem that lists those that are', () => {
  const weighing = variant({ one: fields({ kind: choice('one') }, {}), two: fields({ kind: choice('two') }, {}) })
  expect(weighing({ kind: 'two' }, 'weighing')).toEqual({ ok: true, value: { kind: 'two' } })
  const refused = { field: 'weighing.kind', accepted: 'one of one, two' }
  expect(weighing({ kind: 'toString' }, 'weighing')).toMatchObject({ error: [{ ...refused, kind: 'unreadable' }] })
  expect(weighing({}, 'weighing')).toMatchObject({ error: [{ ...refused, kind: 'missing' }] })
})

test('[limit] text that is no JSON is quoted in part, a byte order mark is passed over', () => {
  expect(parseJson('\uFEFF{}', 'scale file')).toEqual({ ok: true, value: {} })
  const refused = parseJson('x'.repeat(1e6), 'scale file')
  expect(refused).toMatchObject({ ok: false, error: [{ field: 'scale file' }] })
  expect(JSON.stringify(refused).length).toBeLessThan(500)
})
