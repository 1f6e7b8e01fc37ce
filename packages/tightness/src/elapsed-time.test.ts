import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { elapsedTime } from './elapsed-time.ts'

const seconds = (text: string): number => {
  const time = elapsedTime(text, 'time')
  if (!time.ok) throw new Error(`${time.error.kind}: ${text}`)
  return time.value.seconds
}

describe('what people and gauges write', () => {
  test.each([
    ['0', 0],
    ['90.5', 90.5],
    ['5 min', 300],
    ['1 h 20 min', 4800],
    ['0:05:00', 300],
    ['14:05:30', 50_730],
  ])('[property] %s is %f s', (text, s) => {
    expect(seconds(text)).toBe(s)
  })

  test.each([
    ['2026-02-28T23:59:00Z', '2026-03-01T00:01:00Z', 120],
    ['2028-02-28 23:59:00', '2028-03-01 00:00:00', 86_460],
    ['2000-02-28T00:00Z', '2000-03-01T00:00Z', 2 * 86_400],
    ['1900-02-28T00:00Z', '1900-03-01T00:00Z', 86_400],
    ['2026-12-31T23:59:59,5Z', '2027-01-01T00:00:00Z', 0.5],
    ['2026-05-04T14:05:30+02:00', '2026-05-04T12:05:30Z', 0],
    ['2026-05-04T14:05:30-0700', '2026-05-04T21:05:31Z', 1],
  ])('[property] from %s to %s: %f s', (from, to, s) => {
    expect(seconds(to) - seconds(from)).toBeCloseTo(s, 6)
  })

  test('[oracle] dates agree with the calendar of the platform (ECMAScript Date)', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1970-01-01'), max: new Date('2200-01-01'), noInvalidDate: true }),
        (date) => {
          const text = date.toISOString()
          return Math.abs(seconds(text) - seconds('1970-01-01T00:00:00Z') - date.getTime() / 1000) < 1e-3
        },
      ),
      { seed: 5, numRuns: 500 },
    )
  })
})

describe('what is refused', () => {
  test('[limit] 14:05 is asked about: minutes or hours', () => {
    expect(elapsedTime('14:05', 'time')).toMatchObject({ ok: false, error: { kind: 'ambiguous', value: '14:05' } })
  })

  test.each([
    '',
    'soon',
    '-5',
    '1:60:00',
    '2026-02-30T00:00Z',
    '2026-13-01T00:00Z',
    '2026-05-04T25:00Z',
    '2026-05-04',
    '2026-05-04T14:05:99Z',
  ])('[limit] “%s” cannot be read', (text) => {
    expect(elapsedTime(text, 'line 3, time')).toMatchObject({
      ok: false,
      error: { kind: 'unreadable', field: 'line 3, time' },
    })
  })

  test('[property] no text makes it throw, and a long one is cut short when quoted', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const time = elapsedTime(text, 'time')
        return time.ok ? Number.isFinite(time.value.seconds) : String(time.error.value).length <= 62
      }),
      { seed: 6, numRuns: 1000 },
    )
  })
})
