import { expect, test } from 'vitest'
import { readFields } from './fields.ts'

const TYPES = { refrigerant: 'text', pressure_Pa: 'number' } as const

test('[property] known fields of the right type are handed through, absent ones stay absent', () => {
  const input = { refrigerant: 'R-32', pressure_Pa: 1e6 }
  expect(readFields(input, TYPES)).toEqual({ ok: true, value: input })
  expect(readFields({}, TYPES)).toEqual({ ok: true, value: {} })
})

test.each([
  [{ pressure: 1 }, 'unknown', 'pressure', '1'],
  [JSON.parse('{"__proto__": 1}'), 'unknown', '__proto__', '1'],
  [{ constructor: 1 }, 'unknown', 'constructor', '1'],
  [{ '': 1 }, 'unknown', '""', '1'],
  [{ pressure_Pa: '118 psig' }, 'unreadable', 'pressure_Pa', '118 psig'],
  [{ pressure_Pa: null }, 'unreadable', 'pressure_Pa', 'null'],
  [{ refrigerant: 410 }, 'unreadable', 'refrigerant', '410'],
  [{ refrigerant: ['R-32'] }, 'unreadable', 'refrigerant', 'a list of 1'],
  [{ refrigerant: {} }, 'unreadable', 'refrigerant', 'an object'],
  [[], 'unreadable', 'line', 'a list of 0'],
  [null, 'unreadable', 'line', 'null'],
  ['R-32', 'unreadable', 'line', 'R-32'],
])('[limit] %j is a problem that names the field and the value', (input, kind, field, value) => {
  expect(readFields(input, TYPES)).toMatchObject({ ok: false, error: [{ kind, field, value }] })
})

test('[property] all wrong fields are told at once', () => {
  const read = readFields({ refrigerant: 1, pressure_Pa: 'x', colour: 'red' }, TYPES)
  expect(read.ok ? [] : read.error.map((problem) => problem.field)).toEqual(['refrigerant', 'pressure_Pa', 'colour'])
})
