import { METRIC, quantity, render } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import type { Exceedance } from './exceedance.ts'
import { US_40_CFR_82_157 } from './laws/us-40-cfr-82-157.ts'
import { US_40_CFR_84_106 } from './laws/us-40-cfr-84-106.ts'
import { repairClocks } from './repair-clocks.ts'

const pounds = (lb: number) => quantity('mass', lb * 0.45359237)
const due = (rest: Partial<Exceedance> = {}, law = US_40_CFR_82_157) => {
  const clocks = repairClocks(
    { use: 'commercial-refrigeration', fullCharge: pounds(200), exceededOn: '2026-03-10', ...rest },
    law,
  )
  if (!clocks.ok) throw new Error(JSON.stringify(clocks.error))
  const [repair, initial, followUp, inspection, plan, retrofit] = clocks.value.map(({ due }) =>
    due.kind === 'by' ? due.day : `waits for ${render(due.for, METRIC)}`,
  )
  return { repair, initial, followUp, inspection, plan, retrofit }
}

// 40 CFR 82.157(d) to (h) and 84.106(d) to (h), READ; the dates COMPUTED by hand.
describe('clocks', () => {
  test('[published] repair and initial test in 30 days, in 120 where a process must be shut down', () => {
    expect(due()).toMatchObject({ repair: '2026-04-09', initial: '2026-04-09', plan: '2026-04-09' })
    expect(due({ processShutdown: true })).toMatchObject({ repair: '2026-07-08', initial: '2026-07-08' })
  })

  test('[published] follow-up test within 10 days of the initial one, or of normal running after an evacuation', () => {
    expect(due().followUp).toBe('waits for a passed initial verification test')
    expect(due({ initialTestPassedOn: '2026-03-20' }).followUp).toBe('2026-03-30')
    expect(due({ initialTestPassedOn: '2026-03-20', runsNormallyOn: '2026-03-25' }).followUp).toBe('2026-04-04')
  })

  test('[published] inspections: every three months from 500 lb of refrigeration on, else once a calendar year', () => {
    const large = { fullCharge: pounds(500), lastInspectionOn: '2026-03-15' }
    expect(due(large).inspection).toBe('2026-06-15')
    expect(due({ ...large, fullCharge: pounds(499) }).inspection).toBe('2027-12-31')
    expect(due({ ...large, use: 'comfort-cooling' }).inspection).toBe('2027-12-31')
    expect(due().inspection).toBe('2026-12-31')
  })

  test('[published] under the newer law they start at the passed follow-up test, and the others are due a year later', () => {
    expect(due({}, US_40_CFR_84_106).inspection).toBe('waits for a passed follow-up verification test')
    const passed = { followUpPassedOn: '2026-03-30' }
    expect(due({ ...passed, fullCharge: pounds(500) }, US_40_CFR_84_106).inspection).toBe('2026-06-30')
    expect(due(passed, US_40_CFR_84_106).inspection).toBe('2027-03-30')
    expect(due({ ...passed, lastInspectionOn: '2027-02-01' }, US_40_CFR_84_106).inspection).toBe('2028-02-01')
  })

  test('[published] retrofit within a year of the plan, under the older law at most 13 months after the leak', () => {
    expect(due().retrofit).toBe('waits for the date of the plan')
    expect(due({ retrofitPlanOn: '2026-04-01' }).retrofit).toBe('2027-04-01')
    expect(due({ retrofitPlanOn: '2026-06-01' }).retrofit).toBe('2027-04-10')
    expect(due({ retrofitPlanOn: '2026-06-01' }, US_40_CFR_84_106).retrofit).toBe('2027-06-01')
  })

  test('[published] mothballed, the clocks stand still until refrigerant is added again', () => {
    expect(due({ mothballed: { from: '2026-03-20', to: '2026-04-19' } })).toMatchObject({ repair: '2026-05-09' })
    expect(due({ mothballed: { from: '2026-03-20' } }).repair).toBe(
      'waits for refrigerant to be added to the mothballed appliance',
    )
    expect(due({ mothballed: { from: '2026-05-01' } }).repair).toBe('2026-04-09')
  })

  test('[limit] a day that is none is a problem of its field', () => {
    const exceedance = { use: 'other', fullCharge: pounds(60), exceededOn: '2026-03-10' } as const
    for (const [field, bad] of [
      ['exceededOn', { exceededOn: '2026-02-29' }],
      ['runsNormallyOn', { runsNormallyOn: '' }],
      ['mothballed.to', { mothballed: { from: '2026-03-10', to: 'never' } }],
    ] as const) {
      expect(repairClocks({ ...exceedance, ...bad }, US_40_CFR_82_157)).toMatchObject({ ok: false, error: { field } })
    }
  })
})
