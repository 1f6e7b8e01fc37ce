import { SOUND } from '@chargewright/cycle'
import { describe, expect, test } from 'vitest'
import { CAUSES, HYPOTHESES } from '../src/index.ts'
import { standstillExcess } from '../src/standstill.ts'
import { family, RIGHT_KG } from './sample.ts'

describe('every cause', () => {
  test.each(CAUSES)(
    '[property] %s is told in the words of the trade, with look-alikes and what settles it',
    (cause) => {
      const hypothesis = HYPOTHESES[cause]
      expect(hypothesis.cause).toBe(cause)
      expect(hypothesis.does).toMatch(/\.$/)
      expect(hypothesis.confirms.length).toBeGreaterThan(20)
      expect(hypothesis.priorSource).toMatch(/common practice/)
      expect(hypothesis.lookAlikes.length).toBeGreaterThan(0)
      expect(hypothesis.lookAlikes).not.toContain(cause)
      expect(hypothesis.grid.toSorted((a, b) => a - b)).toEqual(hypothesis.grid)
      expect(hypothesis.prior).toBeGreaterThan(0)
    },
  )
})

describe('the pressure at rest', () => {
  const system = family('fixed-orifice').nominal
  const health = { ...SOUND, charge_kg: RIGHT_KG }
  const gas = (nonCondensable_Pa: number, charge_kg = RIGHT_KG) =>
    standstillExcess(system, { ...health, nonCondensable_Pa, charge_kg }, 300)

  test('[limit] is that of the refrigerant without gas', () => {
    expect(gas(0)).toBe(0)
  })

  test('[property] stands the higher the more gas there is, and the less room it has', () => {
    expect(gas(2e5)).toBeGreaterThan(gas(1e5))
    expect(gas(1e5, 1.3 * RIGHT_KG)).toBeGreaterThan(gas(1e5))
    expect(gas(1e5)).toBeGreaterThan(0.5)
  })
})
