import { inEnglish, METRIC, teller } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { clockOf, timeOf, zoneOf } from './time-in-words.ts'

const tell = teller(METRIC, inEnglish)

test('[property] a time stays in the zone in which the device told it', () => {
  expect(clockOf('2026-06-23T09:24:00Z')).toBe('09:24')
  expect(clockOf('2026-06-23T09:24:00-05:00')).toBe('09:24 −05:00')
  expect(timeOf('2026-06-23T09:24:59.123Z')).toBe('2026-06-23 09:24')
})

test('[property] the zone is called UTC only where every time is', () => {
  expect(zoneOf(['2026-06-23T09:24:00Z', '2026-06-23T09:25:00Z'], tell)).toContain('UTC')
  expect(zoneOf(['2026-06-23T09:24:00Z', '2026-06-23T09:25:00+02:00'], tell)).not.toContain('UTC')
  expect(zoneOf([], tell)).toBe('')
})
