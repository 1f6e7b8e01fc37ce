import { expect, test } from 'vitest'
import { columnMemory } from './column-memory.ts'

function shelf() {
  const kept = new Map<string, string>()
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  }
}

const MEANING = { T1: { what: 'suction-temperature', unit: '°C' }, T2: null } as const

test('[property] columns are remembered by the whole of their headers', () => {
  const own = shelf()
  columnMemory(() => own).remember(['T1', 'T2'], MEANING)
  expect(columnMemory(() => own).recall(['T1', 'T2'])).toEqual(MEANING)
  expect(columnMemory(() => own).recall(['T1'])).toBeUndefined()
})

test('[limit] the kind of log used longest ago is forgotten first', () => {
  const own = shelf()
  const memory = columnMemory(() => own)
  for (let i = 0; i < 31; i++) memory.remember([`T${i}`], {})
  expect(memory.recall(['T0'])).toBeUndefined()
  expect(memory.recall(['T1'])).toEqual({})
})

test('[limit] a shelf that refuses, or holds something else, costs the memory and nothing more', () => {
  const refusing = columnMemory(() => {
    throw new Error('denied')
  })
  refusing.remember(['T1'], MEANING)
  expect(refusing.recall(['T1'])).toBeUndefined()
  const own = shelf()
  own.setItem('chargewright.columns', '{"no": "list"}')
  expect(columnMemory(() => own).recall(['T1'])).toBeUndefined()
})
