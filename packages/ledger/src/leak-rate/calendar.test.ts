import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dayText, monthsLater, readDay, yearEnd, yearOf } from './calendar.ts'

const day = (text: string) => {
  const read = readDay(text, 'date')
  return read.ok ? read.value : Number.NaN
}
const later = (text: string, months: number) => dayText(monthsLater(day(text), months))

describe('calendar', () => {
  // Oracle: Date of the JavaScript engine, in UTC (ECMA-262, proleptic Gregorian).
  test('[oracle] every day of 1900 to 2199 is numbered and written as the engine does', () => {
    const [first, last] = [Date.UTC(1900, 0, 1) / 864e5, Date.UTC(2199, 11, 31) / 864e5]
    let wrong = 0
    for (let n = first; n <= last; n++) {
      const text = new Date(n * 864e5).toISOString().slice(0, 10)
      if (day(text) !== n || dayText(n) !== text) wrong += 1
    }
    expect(wrong).toBe(0)
  })

  test('[property] months later is the same date or the last of a shorter month, over the year and back', () => {
    expect(later('2026-01-31', 1)).toBe('2026-02-28')
    expect(later('2028-01-31', 1)).toBe('2028-02-29')
    expect(later('2026-11-30', 3)).toBe('2027-02-28')
    expect(later('2026-12-15', 1)).toBe('2027-01-15')
    expect(later('2028-02-29', 12)).toBe('2029-02-28')
    expect(dayText(yearEnd(yearOf(day('2026-02-03'))))).toBe('2026-12-31')
  })

  test('[limit] a timestamp counts by the day it says; what is no day is refused', () => {
    expect(day('2026-02-03T23:59:59+02:00')).toBe(day('2026-02-03'))
    for (const text of [
      '2026-02-30',
      '2026-13-01',
      '2026-2-3',
      '',
      'today',
      '2026-02-03 10:00',
      '1899-12-31',
      '2200-01-01',
    ]) {
      expect(readDay(text, 'date').ok, text).toBe(false)
    }
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(readDay(text, 'date').ok).toBe(false)
      }),
      { seed: 1900 },
    )
  })
})
