import fc from 'fast-check'
import { expect, test } from 'vitest'
import { widthOf } from './columns.ts'
import { wrap } from './wrap.ts'

test('[property] hanging lines stand under the text of the first', () => {
  expect(wrap('one two three four', 12, '  1. ')).toEqual(['  1. one two', '     three', '     four'])
})

test('[property] all words are kept in order, and no line is too long unless one word is', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z°±]{1,12}$/)), fc.integer({ min: 20, max: 100 }), (words, width) => {
      const lines = wrap(words.join(' '), width, '  ')
      expect(
        lines
          .join(' ')
          .split(' ')
          .filter((word) => word !== ''),
      ).toEqual(words)
      expect(Math.max(...lines.map(widthOf))).toBeLessThanOrEqual(width)
    }),
    { seed: 42 },
  )
})

test('[limit] a no-break space holds two words together and is written as a plain one', () => {
  expect(wrap('aaa bbb\u00a0[1]', 8)).toEqual(['aaa', 'bbb [1]'])
  expect(wrap('', 80)).toEqual([''])
  expect(wrap('much-too-long-a-word x', 5)).toEqual(['much-too-long-a-word', 'x'])
})
