import { expect, test } from 'vitest'
import { type Memory, readMemory } from './index.ts'

const memory: Memory = {
  version: 1,
  twin: '1',
  visits: 2,
  names: ['a', 'b'],
  mean: [0, 0.1],
  covariance: [
    [1, 0.2],
    [0.2, 2],
  ],
}

test('[property] a memory that was written down is read back as it was', () => {
  expect(readMemory(JSON.parse(JSON.stringify(memory)))).toEqual({ ok: true, value: memory })
})

test.each([
  ['memory', []],
  ['memory.version', { ...memory, version: 2 }],
  ['memory.twin', { ...memory, twin: 3 }],
  ['memory.visits', { ...memory, visits: 0.5 }],
  ['memory.names', { ...memory, names: 'a, b' }],
  ['memory.mean', { ...memory, mean: [0] }],
  ['memory.mean', { ...memory, mean: [0, null] }],
  ['memory.covariance', { ...memory, covariance: [[1, 0]] }],
  [
    'memory.covariance',
    {
      ...memory,
      covariance: [
        [1, 0],
        [0, -1],
      ],
    },
  ],
])('[limit] a damaged one is refused by the name of what is damaged: %s', (field, damaged) => {
  const read = readMemory(damaged)
  expect(read.ok ? 'read' : read.error).toMatchObject({ kind: 'unreadable', field })
})
