import { APPLICATIONS, type Application, checkVisitFile, FIGURE_IDS, METERING_DEVICES } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { tradeDefaults } from './trade-defaults.ts'

const applications = Object.keys(APPLICATIONS) as Application[]
const devices = [undefined, ...(Object.keys(METERING_DEVICES) as (keyof typeof METERING_DEVICES)[])]

describe('what is usual in the trade', () => {
  test('[property] it is a valid statement and no figure, for every application and device', () => {
    for (const application of applications) {
      for (const device of devices) {
        const facts = tradeDefaults(application, device)
        const event = { id: 'e', at: '2026-01-31T14:05:00Z', kind: 'system-described', facts }
        expect(checkVisitFile({ format: 'chargewright-visit', version: 1, id: 'v', events: [event] }).ok).toBe(true)
        expect(FIGURE_IDS.filter((id) => Object.hasOwn(facts, id))).toEqual([])
        if (device) expect(facts.meteringDevice).toBe(device)
      }
    }
  })

  test('[property] a capillary tube stands behind no receiver, a valve of a cold room does', () => {
    expect(tradeDefaults('low-temperature', 'capillary').receiver).toBe(false)
    expect(tradeDefaults('low-temperature', undefined)).toMatchObject({
      meteringDevice: 'thermostatic',
      receiver: true,
    })
  })
})
