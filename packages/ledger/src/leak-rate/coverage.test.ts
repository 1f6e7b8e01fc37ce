import { INCH_POUND, quantity, render } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type Appliance, leakRepairCoverage } from './coverage.ts'
import { LEAK_REPAIR_LAWS } from './laws/leak-repair-laws.ts'
import type { LeakRepairLaw } from './leak-repair-law.ts'
import type { Provision } from './provision.ts'

const pounds = (lb: number, u?: number) => quantity('mass', lb * 0.45359237, u)
const appliance = (refrigerant: string, lb: number, rest: Partial<Appliance> = {}): Appliance => ({
  refrigerant,
  fullCharge: pounds(lb),
  residentialOrLightCommercial: false,
  ...rest,
})
const verdicts = (one: Appliance, on = '2026-06-01') => {
  const coverage = leakRepairCoverage(one, on)
  return coverage.ok ? coverage.value.map(({ law, verdict }) => `${law.id} ${verdict}`) : coverage.error
}

describe('coverage', () => {
  // 40 CFR 82.157(a) and 84.106(a), READ: 50 lb of an ozone-depleting substance; 15 lb of a hydrofluorocarbon from 2026 on.
  test.each([
    ['R-22', 50, ['40 CFR 82.157 applies', '40 CFR 84.106 does-not-apply']],
    ['R-22', 49.9, ['40 CFR 82.157 does-not-apply', '40 CFR 84.106 does-not-apply']],
    ['R-410A', 15, ['40 CFR 82.157 does-not-apply', '40 CFR 84.106 applies']],
    ['R-410A', 14.9, ['40 CFR 82.157 does-not-apply', '40 CFR 84.106 does-not-apply']],
    ['R-408A', 60, ['40 CFR 82.157 applies', '40 CFR 84.106 applies']],
    ['R-454C', 20, ['40 CFR 82.157 does-not-apply', '40 CFR 84.106 applies']],
    ['propane', 200, ['40 CFR 82.157 does-not-apply', '40 CFR 84.106 does-not-apply']],
  ])('[published] %s, %s lb in 2026', (refrigerant, lb, expected) => {
    expect(verdicts(appliance(refrigerant, lb))).toEqual(expected)
  })

  test('[published] before 2026 no law on hydrofluorocarbons, but in 2019 the older one covered them', () => {
    expect(verdicts(appliance('R-410A', 60), '2025-12-31')).toEqual(['40 CFR 82.157 does-not-apply'])
    expect(verdicts(appliance('R-410A', 60), '2020-04-10')).toEqual(['40 CFR 82.157 does-not-apply'])
    expect(verdicts(appliance('R-410A', 60), '2020-04-09')).toEqual(['40 CFR 82.157 applies'])
    expect(verdicts(appliance('propane', 60), '2019-06-01')).toEqual(['40 CFR 82.157 cannot-tell'])
    expect(verdicts(appliance('R-22', 60), '2018-12-31')).toEqual([])
  })

  test('[published] residential and light commercial air conditioning is exempt under the newer law', () => {
    expect(verdicts(appliance('R-410A', 60, { residentialOrLightCommercial: true }))).toContain(
      '40 CFR 84.106 does-not-apply',
    )
    const { residentialOrLightCommercial: _, ...unsaid } = appliance('R-410A', 60)
    expect(verdicts(unsaid)).toContain('40 CFR 84.106 cannot-tell')
  })

  test('[limit] a full charge that cannot be told from the least one is not decided, and says so in the reader’s units', () => {
    const near = leakRepairCoverage(appliance('R-410A', 15, { fullCharge: pounds(15.1, 0.1) }), '2026-06-01')
    const found = near.ok ? near.value.find(({ law }) => law.id === '40 CFR 84.106') : undefined
    expect(found?.verdict).toBe('cannot-tell')
    expect(render(found!.because, INCH_POUND)).toMatch(/cannot be told from 15 lb 0 oz/)
  })

  test('[limit] a refrigerant that is not listed, a day that is none and no charge are problems or not covered', () => {
    expect(verdicts(appliance('R-0000', 60))).toMatchObject({ kind: 'unknown' })
    expect(verdicts(appliance('R-22', 60), 'now')).toMatchObject({ kind: 'unreadable', field: 'on' })
    expect(verdicts(appliance('R-22', Number.NaN))).toContain('40 CFR 82.157 does-not-apply')
  })
})

describe('laws as data', () => {
  const provisions = (law: LeakRepairLaw): readonly Provision<unknown>[] => {
    const found: Provision<unknown>[] = []
    const visit = (value: unknown) => {
      if (typeof value !== 'object' || value === null) return
      if ('standing' in value) found.push(value as Provision<unknown>)
      else Object.values(value).forEach(visit)
    }
    visit(law)
    return found
  }

  test('[property] every figure has a place in its law and says how it is known', () => {
    for (const law of LEAK_REPAIR_LAWS) {
      expect(provisions(law).length).toBeGreaterThan(14)
      for (const { source, standing } of provisions(law)) {
        expect(source).toMatch(/^40 CFR (82\.157|84\.106)\(/)
        expect(standing).toBe('read')
      }
    }
  })

  test('[property] of one law only one wording holds on any day', () => {
    const days = ['2018-12-31', '2019-01-01', '2020-04-09', '2020-04-10', '2025-12-31', '2026-01-01', '2030-01-01']
    for (const day of days) {
      const ids = LEAK_REPAIR_LAWS.filter(({ inForce: { from, to } }) => from <= day && (!to || day <= to)).map(
        ({ id }) => id,
      )
      expect(new Set(ids).size).toBe(ids.length)
    }
  })
})
