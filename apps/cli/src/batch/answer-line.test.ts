import { fail, ok } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { missing } from '../failure.ts'
import { answerLine, type BatchVerb } from './answer-line.ts'

const echo: BatchVerb = (input) => ok({ input })
const answer = (text: string, verb = echo) => {
  const answered = answerLine({ number: 7, text }, verb)
  return answered && JSON.parse(answered.json)
}

describe('a line is answered with one line of JSON', () => {
  test.each([
    ['{"a": 1}\r', { input: { a: 1 } }],
    [' 5 ', { input: 5 }],
  ])('[property] %j', (text, expected) => {
    expect(answer(text)).toEqual(expected)
  })

  test.each(['', '   ', '\r', '\t\r'])('[limit] blank line %j asks nothing', (text) => {
    expect(answer(text)).toBeUndefined()
  })

  test('[property] an answer never holds a line break, whatever was in the question', () => {
    expect(answerLine({ number: 1, text: '{"a": "\\n\\r\\u2028"}' }, echo)?.json).not.toMatch(/[\n\r]/)
  })
})

describe('a line that cannot be answered', () => {
  test('[property] names its number, its field, its value and what would do', () => {
    expect(answer('{"a": ')).toMatchObject({
      line: 7,
      error: {
        kind: 'unreadable',
        field: 'line',
        value: '{"a": ',
        accepted: expect.stringContaining('one JSON object'),
      },
    })
  })

  test('[property] tells all problems, the first as the error', () => {
    const verb: BatchVerb = () => fail([missing('a', 'an a'), missing('b', 'a b')])
    expect(answer('{}', verb)).toMatchObject({ line: 7, error: { field: 'a' }, others: [{ field: 'b' }] })
  })

  test('[limit] a fault of the program costs one line only', () => {
    const verb: BatchVerb = () => {
      throw new RangeError('too deep')
    }
    expect(answer('{}', verb)).toMatchObject({
      line: 7,
      error: { field: 'chargewright', value: 'RangeError: too deep' },
    })
  })

  test('[limit] a hostile line is quoted in part', () => {
    expect(answer(`"${'x'.repeat(1e6)}`).error.message.length).toBeLessThan(300)
  })

  test('[limit] a million brackets are refused without a fault', () => {
    expect(answer('['.repeat(1e6))).toMatchObject({ error: { kind: 'unreadable', field: 'line' } })
  })
})
