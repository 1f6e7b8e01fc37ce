import { assess } from '@chargewright/charging'
import { INCH_POUND, render } from '@chargewright/quantity'
import { fold, type VisitEvent } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { besideReadings } from './beside-readings.ts'

const at = '2026-01-31T14:05:00Z'

describe('derived values beside the readings', () => {
  test('[property] superheat stands where it becomes known: at the suction line, whichever was read first', () => {
    for (const order of [
      ['suction-pressure', 'suction-temperature'] as const,
      ['suction-temperature', 'suction-pressure'] as const,
    ]) {
      const beside = besideOf(order.map((what) => [what, what === 'suction-pressure' ? '110 psig' : '63 °F']))
      expect(beside['suction-temperature']?.join()).toContain('Superheat')
      expect(beside['suction-pressure']?.join()).toContain('Evaporating temperature')
      expect(beside['suction-pressure']?.join()).not.toContain('Superheat')
    }
  })

  test('[property] a reading that is a measure by itself is not said twice', () => {
    expect(besideOf([['return-air-wet-bulb', '67 °F']])['return-air-wet-bulb']).toBeUndefined()
  })

  test('[limit] without readings there is nothing to stand beside', () => {
    expect(besideOf([])).toEqual({})
  })
})

function besideOf(readings: readonly (readonly [Parameters<typeof event>[0], string])[]) {
  const system: VisitEvent = { id: 's', at, kind: 'system-described', facts: { refrigerant: 'R-410A' } }
  const visit = fold({ id: 'v', events: [system, ...readings.map(([what, value]) => event(what, value))] })
  const beside = besideReadings(assess(visit).measures, visit.readings)
  return Object.fromEntries(
    Object.entries(beside).map(([id, evidence]) => [
      id,
      evidence.map(({ statement }) => render(statement, INCH_POUND)),
    ]),
  )
}

function event(what: 'suction-pressure' | 'suction-temperature' | 'return-air-wet-bulb', value: string): VisitEvent {
  return { id: what, at, kind: 'reading', what, value }
}
