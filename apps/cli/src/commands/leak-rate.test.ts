import { readFileSync } from 'node:fs'
import { INCH_POUND } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { leakRate } from './leak-rate.ts'
import { leakRateJson } from './leak-rate-json.ts'
import { leakRateText } from './leak-rate-text.ts'

const example = (name: string) => JSON.parse(readFileSync(`examples/service/${name}.json`, 'utf8'))

describe('leak-rate', () => {
  function found(data: unknown) {
    const answer = leakRate(data)
    if (!answer.ok) throw new Error(JSON.stringify(answer.error))
    return answer.value
  }

  // COMPUTED by hand: 5 lb of 60 lb in 120 days is 5/60 · 365/120 = 25.35 %; 3 + 5 lb in a year are 8/60 = 13.33 %.
  test('[oracle] both methods, by hand', () => {
    const json = leakRateJson(found(example('leak-history-r22')), INCH_POUND)
    expect(json).toMatchObject({
      laws: [
        {
          law: '40 CFR 82.157',
          rates: [
            { method: 'annualizing', rate_fraction: expect.closeTo(0.25347, 4), over: true },
            { method: 'rolling', rate_fraction: expect.closeTo(0.13333, 4), over: false },
          ],
        },
      ],
    })
  })

  test('[property] clocks run once a rate is over, and wait for what has not happened', () => {
    const [law] = found(example('leak-history-r22')).laws
    expect(law?.clocks.map(({ due }) => (due.kind === 'by' ? due.day : 'waits'))).toEqual([
      '2026-03-05',
      '2026-03-05',
      '2026-02-20',
      '2026-12-31',
      '2026-03-05',
      'waits',
    ])
    expect(found(example('leak-history-r410a')).laws.map(({ clocks }) => clocks)).toEqual([[]])
  })

  test('[property] what was not read in the law bears a star, and the page says what the star means', () => {
    const text = leakRateText(found(example('leak-history-r410a')), INCH_POUND, 80)
    expect(text).toContain('* It holds 25.05 t of CO₂ equivalent')
    expect(text).toContain('· Leak rate 7.5 % a year (annualizing)')
    expect(text).toContain('* not read in the law')
  })

  test('[property] the earlier addition may be the one in question', () => {
    const history = { ...example('leak-history-r22'), on: '2025-10-06' }
    expect(leakRateText(found(history), INCH_POUND, 80)).toContain(
      'No rate by the annualizing method: additions: missing',
    )
  })

  test.each([
    ['refrigerant', 'R-99999'],
    ['use', 'beer'],
    ['fullCharge', '60'],
    ['additions', []],
  ])('[limit] %s as %j is a problem of it', (field, value) => {
    const history = { ...example('leak-history-r22'), [field]: value }
    expect(leakRate(history)).toMatchObject({ ok: false, error: [{ field }] })
  })
})
