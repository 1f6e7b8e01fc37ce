import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { anyBook, anyMovement, cylinder, kg } from '../../test/any-book.ts'
import { balanceBook } from './balance-book.ts'
import { mayMove, roomLeft } from './may-move.ts'
import type { Movement } from './movement.ts'

const book = {
  cylinders: [cylinder('A'), cylinder('R', { holds: 'recovered', firstWeighing: kg(20) })],
  entries: [],
}
const recovery = (mass: number, rest: Partial<Movement> = {}): Movement => ({
  id: 'planned',
  at: '2026-02-03T10:00:00Z',
  cylinder: 'R',
  refrigerant: 'R-410A',
  direction: 'to-cylinder',
  counterpart: { kind: 'system', system: 'shop' },
  weighing: { kind: 'difference', mass: kg(mass) },
  ...rest,
})
const refusal = (planned: Movement) => {
  const asked = mayMove(book, planned)
  return asked.ok ? undefined : asked.error
}

describe('may it move', () => {
  test('[limit] what fits may go in; what would overfill, mix or spoil is refused with the finding', () => {
    expect(refusal(recovery(4))).toBeUndefined()
    expect(refusal(recovery(6))?.findings.map(({ kind }) => kind)).toEqual(['overfilled'])
    expect(refusal(recovery(1, { refrigerant: 'R-22' }))?.findings.map(({ kind }) => kind)).toEqual(['mixed'])
    expect(refusal(recovery(1, { cylinder: 'A' }))?.findings.map(({ kind }) => kind)).toEqual(['recovered-into-new'])
  })

  test('[limit] a movement that could not be written down is refused with its problem', () => {
    expect(refusal(recovery(1, { cylinder: 'lost' }))?.problems).toMatchObject([{ kind: 'unknown' }])
    expect(refusal(recovery(Number.NaN))?.problems).toMatchObject([{ kind: 'out-of-range' }])
    const taken = mayMove({ ...book, entries: [{ kind: 'moved', movement: recovery(1) }] }, recovery(1))
    expect(!taken.ok && taken.error.problems).toMatchObject([{ kind: 'ambiguous' }])
  })

  test('[property] the room left may be filled, a tenth of a kilogram more may not', () => {
    const account = balanceBook(book).cylinders.find(({ cylinder: { id } }) => id === 'R')!
    const room = roomLeft(account)
    if (!room.ok) throw new Error(JSON.stringify(room.error))
    // The planned weighing is uncertain too, which the room cannot know: hence the few grams.
    expect(mayMove(book, recovery(room.value.si - 0.01)).ok).toBe(true)
    expect(mayMove(book, recovery(room.value.si + 0.1)).ok).toBe(false)
  })

  test('[property] whatever may go into a cylinder leaves it unmixed and within its limit', () => {
    fc.assert(
      fc.property(anyBook, anyMovement, (any, movement) => {
        const allowed = mayMove(any, { ...movement, id: 'planned', direction: 'to-cylinder' })
        if (!allowed.ok) return
        const { content, fillLimit, refrigerants } = allowed.value.after
        expect(refrigerants).toHaveLength(1)
        if (fillLimit.ok) expect(content.si + 2 * content.u!).toBeLessThanOrEqual(fillLimit.value.mass.si + 1e-6)
      }),
      { seed: 2028, numRuns: 500 },
    )
  })
})
