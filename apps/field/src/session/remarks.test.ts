import { assess } from '@chargewright/charging'
import { INCH_POUND } from '@chargewright/quantity'
import { fold, type VisitEvent } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { remarks } from './remarks.ts'

const at = '2026-01-31T14:05:00Z'
const line = (id: string, value: string): VisitEvent => ({
  id,
  at,
  kind: 'reading',
  what: 'suction-temperature',
  value,
})

describe('remarks beside the fields', () => {
  test('[property] a stored entry that cannot be read is told at its field', () => {
    expect(remarksOn([line('a', 'pasta')]).readings['suction-temperature']).toContain(
      'Cannot be used. Suction line: cannot read “pasta”',
    )
  })

  test('[property] a doubtful one is told, and no longer when a better one was read', () => {
    expect(remarksOn([line('a', '300 °F')]).readings['suction-temperature']).toContain('300 °F is outside')
    expect(remarksOn([line('a', '300 °F'), line('b', '63 °F')]).readings['suction-temperature']).toBeUndefined()
  })

  test('[limit] a pressure that the refrigerant cannot have is told in the units of the reader', () => {
    const facts = { refrigerant: 'R-410A', meteringDevice: 'fixed-orifice', application: 'comfort-cooling' } as const
    const told = remarksOn([
      { id: 'a', at, kind: 'system-described', facts },
      { id: 'b', at, kind: 'reading', what: 'suction-pressure', value: '723 psig' },
    ]).readings['suction-pressure']
    expect(told).toMatch(/^Cannot be used\. Suction pressure: 737\.7\spsia is outside \d+\.\d\spsia to \d+\.\d\spsia$/)
  })

  test('[property] a figure of the system is told at the figure', () => {
    const facts = { nominalCapacity: 'three', elevation: '1200 ft' }
    const { facts: onFact, others } = remarksOn([{ id: 'a', at, kind: 'system-described', facts }])
    expect(onFact.nominalCapacity).toContain('cannot read “three”')
    expect(onFact.elevation).toBeUndefined()
    expect(others).toEqual([])
  })

  test('[property] a problem that belongs to no field is not lost', () => {
    const { others } = remarksOn([{ id: 'a', at, kind: 'correction', corrects: 'nothing' }])
    expect(others).toMatchObject([{ says: expect.stringContaining('nothing'), eventId: undefined }])
  })

  test('[property] a doubt about a weighed move is told with its entry, one about an older reading no more', () => {
    const move = { kind: 'refrigerant-moved', direction: 'into-system', phase: 'vapour', port: 'suction' } as const
    const { others } = remarksOn([
      { id: 'a', at, kind: 'system-described', facts: { nameplateCharge: '104 oz' } },
      line('b', '300 °F'),
      line('c', '63 °F'),
      { id: 'd', at, ...move, mass: '111 oz', compressor: 'running' },
      { id: 'e', at, ...move, mass: '11 oz', compressor: 'running' },
    ])
    const says = expect.stringMatching(
      /^Doubtful, kept all the same\. .*: 6\slb\s15\soz is outside 0\.0\soz to 6\slb\s8\soz$/,
    )
    expect(others).toEqual([{ says, eventId: 'd' }])
  })
})

function remarksOn(events: readonly VisitEvent[]) {
  const visit = fold({ id: 'v', events })
  return remarks(visit, assess(visit), INCH_POUND)
}
