import { expect, test } from 'vitest'
import { correctedWait } from './corrected-wait.ts'

const over = { kind: 'wait', purpose: 'settle', duration: '15 min' } as const
const begun = { ...over, ends: '2026-06-03T13:15:00.000Z' } as const

test('[property] a wait that had only begun goes on and ends later or earlier, as its duration changed', () => {
  expect(correctedWait(begun, { ...over, duration: '20 min' })).toEqual({
    ...over,
    duration: '20 min',
    ends: '2026-06-03T13:20:00.000Z',
  })
  expect(correctedWait(begun, { ...over, duration: '900 s' }).ends).toBe(begun.ends)
})

test('[limit] one that is over stays over; one whose length cannot be read ends when it would have', () => {
  expect(correctedWait(over, { ...over, purpose: 'equalise' })).toEqual({ ...over, purpose: 'equalise' })
  expect(correctedWait({ ...begun, duration: 'a while' }, over).ends).toBe(begun.ends)
})
