import { readFileSync } from 'node:fs'
import { INCH_POUND } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { cylinders } from './cylinders.ts'
import { cylindersJson } from './cylinders-json.ts'
import { cylindersText } from './cylinders-text.ts'

const example = (name: string) => JSON.parse(readFileSync(`examples/service/${name}.json`, 'utf8'))
const OZ = 0.45359237 / 16

describe('cylinders', () => {
  function found(data: unknown) {
    const answer = cylinders(data)
    if (!answer.ok) throw new Error(JSON.stringify(answer.error))
    return answer.value
  }

  test('[property] weights between the entries are booked as unexplained, and the corrected entry counts', () => {
    const { balance } = found(example('cylinder-book'))
    const recovery = balance.cylinders[1]!
    expect(recovery.unexplained.si / OZ).toBeCloseTo(3, 9)
    expect(balance.systems.find(({ system }) => system === 'demo ice maker')?.recovered.si).toBeCloseTo(50 * OZ, 9)
    expect(balance.findings.map(({ kind }) => kind)).toEqual(['weight-changed-between'])
  })

  test('[property] a cylinder that may not be filled has no room, one that may has', () => {
    const answer = found(example('cylinder-book'))
    expect(cylindersText(answer, INCH_POUND, 80)).toMatch(
      /demo N-3.*only to be emptied.*demo R-7.*room for 10\.\d\d lb/s,
    )
    expect(cylindersJson(answer, INCH_POUND)).toMatchObject({
      cylinders: [{ id: 'demo N-3' }, { id: 'demo R-7', room_left_kg: expect.closeTo(4.91, 1) }],
      findings: [{ kind: 'weight-changed-between', severity: 'check', movement: 'm3' }],
    })
  })

  test('[limit] what is wrong in a book is told by its path', () => {
    const book = example('cylinder-book')
    book.cylinders[0].tare = '6'
    book.entries[1].movement.weighing.before = 50
    book.entries[2].kind = 'lost'
    const refused = cylinders(book)
    const fields = refused.ok ? [] : refused.error.map(({ field }) => field)
    expect(fields).toEqual(['cylinders[0].tare', 'entries[1].movement.weighing.before', 'entries[2].kind'])
  })
})
