import { METRIC, render } from '@chargewright/quantity'
import { checkVisitFile, fold, METERING_DEVICES, type MeteringDevice } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { factsOf, readingsOf } from './facts-of.ts'
import { type Case, plateOf, practised } from './practised.ts'
import { benchClock, clockOf, timeOf } from './run.ts'

const CASE: Case = { seed: 4711, device: 'fixed-orifice' }
const WAIT = { kind: 'wait', duration_s: 900 } as const

function state(...requests: Parameters<typeof practised>[1]) {
  const found = practised(CASE, requests)
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

describe('the bench', () => {
  test('[property] the same requests give the same bench, whole or one after the other, and it crosses unchanged', () => {
    const requests = [WAIT, { kind: 'add', mass_kg: 0.1, phase: 'vapour' }, WAIT] as const
    expect(state(...requests)).toEqual(state(...requests))
    expect(structuredClone(state(...requests))).toEqual(state(...requests))
    expect(state(...requests).clock_s).toBe(1800)
    expect(state().instruments).not.toEqual(state(WAIT).instruments)
  })

  test('[property] nothing of the truth is told before the debrief', () => {
    const open = JSON.stringify(state(WAIT))
    expect(open).not.toMatch(/hidden|charge_kg|fault|superheat|subcooling/)
    const { debrief } = state(WAIT, { kind: 'clean-condenser' }, { kind: 'debrief' })
    expect(render(debrief!.statements[0]!, METRIC)).toMatch(
      /^The system had .*; it held \d+ g where 3\s?175 g is right\.$/,
    )
    expect(debrief!.acts).toHaveLength(1)
  })

  test('[limit] what cannot be done is refused with its reason', () => {
    const found = practised(CASE, [{ kind: 'recover', mass_kg: 40 }])
    expect(found).toMatchObject({ ok: false, error: [{ kind: 'out-of-range', field: 'mass to take out' }] })
  })
})

describe('the plate', () => {
  const devices = Object.keys(METERING_DEVICES) as MeteringDevice[]

  test.each(devices)('[property] of a system with a %s device can be stated as the facts of a visit', (device) => {
    const plate = plateOf({ ...CASE, device })
    if (!plate.ok) throw new Error(JSON.stringify(plate.error))
    const events = [{ id: 'e', at: '2026-07-01T12:00:00Z', kind: 'system-described', facts: plate.value }]
    const file = checkVisitFile({ format: 'chargewright-visit', version: 1, id: 'v', events })
    if (!file.ok) throw new Error(JSON.stringify(file.error))
    const { system, problems } = fold(file.value)
    expect(problems).toEqual([])
    expect(system.facts.meteringDevice).toBe(device)
    const hasChart = device === 'fixed-orifice' || device === 'capillary'
    expect(system.facts.makersChart !== undefined).toBe(hasChart)
    expect(system.figures.nameplateSubcooling !== undefined).toBe(device === 'thermostatic' || device === 'electronic')
  })
})

describe('what is entered in the log', () => {
  test('[property] the instruments as readings of the walk, each that a visit knows', () => {
    const readings = readingsOf(state(WAIT).instruments, METRIC)
    expect(readings.map((fact) => 'what' in fact && fact.what)).toEqual([
      'return-air-dry-bulb',
      'return-air-wet-bulb',
      'supply-air-dry-bulb',
      'suction-pressure',
      'suction-temperature',
      'discharge-temperature',
      'condenser-entering-air',
      'condenser-leaving-air',
      'liquid-pressure',
      'liquid-temperature',
      'compressor-power',
    ])
  })

  test('[property] a recharge is weighed out and in, the first by the cylinder', () => {
    const before = state(WAIT)
    const request = { kind: 'recover-evacuate-recharge', mass_kg: 3.175 } as const
    const facts = factsOf(request, before, state(WAIT, request), '3175 g', METRIC)
    expect(facts.map(({ kind }) => kind)).toEqual(['refrigerant-moved', 'adjustment', 'refrigerant-moved'])
    const [out] = facts
    expect(out?.kind === 'refrigerant-moved' && Number.parseFloat(out.mass)).toBeGreaterThan(1)
  })

  test('[property] the time of the log is the start and what was waited since', () => {
    const run = { id: 'r', ...CASE, startedAt: '2026-07-01T12:00:00.000Z', requests: [WAIT, WAIT], events: [] }
    expect(clockOf(run)).toBe(1800)
    expect(timeOf(run)).toBe('2026-07-01T12:30:00.000Z')
    expect(benchClock(3900)).toBe('1:05')
  })
})
