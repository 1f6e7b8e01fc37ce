import { inEnglish, METRIC, teller } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { clockOf, commonOffset, timeOf, zoneOf } from './time-in-words.ts'

const tell = teller(METRIC, inEnglish)

test('[property] a time stays in the zone in which the device told it, which is said where it is not the common one', () => {
  expect(clockOf('2026-06-23T09:24:00-05:00', '-05:00')).toBe('09:24')
  expect(clockOf('2026-06-23T09:24:00-05:00', '-06:00')).toBe('09:24 UTC−05:00')
  expect(clockOf('2026-06-23T09:24:00Z', '-05:00')).toBe('09:24 UTC')
  expect(timeOf('2026-06-23T09:24:59.123+05:45', undefined)).toBe('2026-06-23 09:24 UTC+05:45')
})

test('[property] an offset is the same however it is written', () => {
  expect(commonOffset(['2026-06-23T09:24-0500', '2026-06-23T09:24:00.1-05:00', '2026-06-23T09:24:00-05'])).toBe(
    '-05:00',
  )
  expect(commonOffset(['2026-06-23T09:24Z', '2026-06-23T09:24:00+00:00', '2026-06-23T09:24:00-00:00'])).toBe('Z')
})

test('[property] the zone is named once where all times share it', () => {
  expect(zoneOf(['2026-06-23T09:24:00Z', '2026-06-23T09:25:00Z'], tell)).toContain('UTC,')
  expect(zoneOf(['2026-06-23T09:24:00-05:00'], tell)).toBe('Times are local, UTC−05:00, as the device told them.')
  expect(zoneOf(['2026-06-23T09:24:00Z', '2026-06-23T09:25:00+02:00'], tell)).toContain('each with its zone')
})

test('[limit] without a time there is no zone', () => {
  expect(zoneOf([], tell)).toBe('')
  expect(commonOffset([])).toBeUndefined()
})
