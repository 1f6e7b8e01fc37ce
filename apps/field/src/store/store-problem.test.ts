import { describe, expect, test } from 'vitest'
import { describeStoreProblem, storeProblem } from './store-problem.ts'

describe('what an exception of the storage means', () => {
  test.each([
    ['QuotaExceededError', 'full', 'storage of this device is full'],
    ['SecurityError', 'refused', 'refuses to store'],
    ['InvalidStateError', 'closed', 'Reload this page'],
    ['AbortError', 'failed', 'the words of the browser'],
  ])('[property] %s is “%s” and says what to do', (name, kind, words) => {
    const problem = storeProblem(new DOMException('the words of the browser', name))
    expect(problem.kind).toBe(kind)
    expect(describeStoreProblem(problem)).toContain(words)
  })

  test('[limit] anything can be thrown', () => {
    for (const thrown of [undefined, null, 'text', 7, {}]) expect(storeProblem(thrown).kind).toBe('failed')
  })
})
