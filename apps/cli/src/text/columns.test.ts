import { expect, test } from 'vitest'
import { columns } from './columns.ts'

test('[property] columns are as wide as their widest cell, counted in characters, and end without space', () => {
  const rows = [
    ['a', '1 °F', ''],
    ['long', '12.5 °F', 'x'],
  ]
  expect(columns(rows, ['left', 'right'])).toEqual(['a        1 °F', 'long  12.5 °F  x'])
})

test('[limit] no rows make no lines', () => {
  expect(columns([], [])).toEqual([])
})
