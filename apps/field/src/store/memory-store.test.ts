import { describe, test } from 'vitest'
import { memoryStore } from './memory-store.ts'
import { STORE_CONTRACT } from './store-contract.ts'

describe('a store in memory', () => {
  test.each(Object.entries(STORE_CONTRACT))('[property] %s', (_, holds) => holds(memoryStore()))
})
