import type { Cause, ChargeEstimate, Diagnosis, Observable, ReadingOutlook, Spread } from '@chargewright/diagnosis'
import { describe, expect, it, test } from 'vitest'
import { decide } from './decide.ts'
import { expectedLosses } from './expected-loss.ts'

const CIRCUMSTANCES = { rightCharge_kg: 3, hasReceiver: false }

const about = (mean: number, sd: number): ChargeEstimate => ({ mean, sd, low: mean - 1.6 * sd, high: mean + 1.6 * sd })
const RIGHT = about(0, 0.02)
const CHARGES: Partial<Record<Cause, ChargeEstimate>> = {
  'short-of-charge': about(-0.2, 0.03),
  overcharged: about(0.2, 0.03),
}

function diagnosis(
  probabilities: Partial<Record<Cause, number>>,
  changed: Partial<Diagnosis> = {},
  charges = CHARGES,
): Diagnosis {
  const singles = Object.entries(probabilities).map(([name, probability]) => {
    const cause = name as Cause
    return { cause, probability, severity: { mean: 0.3, sd: 0.1 }, charge: charges[cause] ?? RIGHT }
  })
  return {
    twin: '1',
    calibration: 'test',
    singles: singles.toSorted((a, b) => b.probability - a.probability),
    pairs: [],
    pairShare: 0,
    charge: RIGHT,
    misfit: { distance: 5, degrees: 6, chance: 0.5, unexplained: false },
    readings: [],
    memory: { version: 1, twin: '1', visits: 1, names: [], mean: [], covariance: [] },
    ...changed,
  }
}

const unread = (observable: Observable, expected: Partial<Record<Cause, Spread>>): ReadingOutlook => ({
  observable,
  set: 0,
  read: undefined,
  expected,
})

describe('a decision', () => {
  test.each([
    [{ 'short-of-charge': 0.97, sound: 0.03 }, 'add'],
    [{ overcharged: 0.97, sound: 0.03 }, 'recover'],
    [{ sound: 0.9, 'short-of-charge': 0.1 }, 'hold'],
    [{ 'low-indoor-air': 0.9, sound: 0.1 }, 'other'],
    [{ overcharged: 0.7, 'non-condensables': 0.3 }, 'undecided'],
    [{ sound: 0.15, 'poor-condenser-air': 0.45, 'weak-compressor': 0.4 }, 'undecided'],
  ] as const)('[property] of %o is to %s', (probabilities, kind) => {
    expect(decide(diagnosis(probabilities), CIRCUMSTANCES).kind).toBe(kind)
  })

  it('[property] states the mass with its interval, all positive', () => {
    expect(decide(diagnosis({ 'short-of-charge': 1 }), CIRCUMSTANCES)).toMatchObject({
      kind: 'add',
      mass_kg: expect.closeTo(0.6, 9),
      low_kg: expect.closeTo(0.6 - 3 * 1.6 * 0.03, 9),
      high_kg: expect.closeTo(0.6 + 3 * 1.6 * 0.03, 9),
    })
  })

  it('[property] leaves a charge that is off by less than 5 %', () => {
    const slight = { 'short-of-charge': about(-0.03, 0.01) }
    expect(decide(diagnosis({ 'short-of-charge': 1 }, {}, slight), CIRCUMSTANCES).kind).toBe('hold')
  })

  it('[property] never touches the charge where another fault has more than a quarter of the probability', () => {
    for (let other = 0.26; other < 0.95; other += 0.05) {
      const said = decide(diagnosis({ 'short-of-charge': 1 - other, 'liquid-line-restriction': other }), CIRCUMSTANCES)
      expect(said.kind).not.toBe('add')
    }
  })

  it('[property] says what to mend first where two faults are likelier than one', () => {
    const charge = about(-0.2, 0.05)
    const pairs = [
      { causes: ['poor-condenser-air', 'short-of-charge'], probability: 1, severities: [0.3, -0.2], charge },
    ] as const
    const both = decide(diagnosis({ 'short-of-charge': 1 }, { pairs, pairShare: 0.8 }), CIRCUMSTANCES)
    expect(both).toMatchObject({ kind: 'add', fixFirst: 'poor-condenser-air' })
    const fault = decide(diagnosis({ 'poor-condenser-air': 1 }, { pairs, pairShare: 0.8 }), CIRCUMSTANCES)
    expect(fault).toMatchObject({ kind: 'other', cause: 'poor-condenser-air', afterwards: 'short-of-charge' })
    expect(decide(diagnosis({ 'short-of-charge': 1 }, { pairs, pairShare: 0.3 }), CIRCUMSTANCES)).not.toHaveProperty(
      'fixFirst',
    )
  })

  it('[limit] refuses a system with a receiver', () => {
    expect(decide(diagnosis({ 'short-of-charge': 1 }), { ...CIRCUMSTANCES, hasReceiver: true })).toEqual({
      kind: 'refused',
      reason: 'receiver',
    })
  })
})

describe('the next reading', () => {
  const undecided = { overcharged: 0.5, 'non-condensables': 0.5 }
  const telling = unread('standstill', { overcharged: { mean: 0, sd: 0.7 }, 'non-condensables': { mean: 4, sd: 1 } })
  const idle = unread('supplyAirDrop', { overcharged: { mean: 11, sd: 1 }, 'non-condensables': { mean: 11, sd: 1 } })

  it('[property] is the one that tells the causes apart, and saves what it is worth', () => {
    const said = decide(diagnosis(undecided, { readings: [idle, telling] }), CIRCUMSTANCES)
    expect(said).toMatchObject({ kind: 'read', next: { observable: 'standstill', required: false } })
    if (said.kind === 'read') expect(said.next.saves).toBeGreaterThan(1)
  })

  it('[property] is none where another fault is sure without', () => {
    const liquid = unread('subcooling', { 'low-indoor-air': { mean: 6, sd: 1 } })
    expect(decide(diagnosis({ 'low-indoor-air': 1 }, { readings: [liquid] }), CIRCUMSTANCES).kind).toBe('other')
  })

  it('[property] is the liquid line where that was never read, however sure the rest', () => {
    const liquid = unread('subcooling', { sound: { mean: 6, sd: 1 } })
    expect(decide(diagnosis({ sound: 1 }, { readings: [liquid, telling] }), CIRCUMSTANCES)).toMatchObject({
      kind: 'read',
      next: { observable: 'subcooling', required: true },
    })
  })
})

describe('expected losses', () => {
  it('[property] of what is certain are those of the table', () => {
    const losses = Object.fromEntries(
      expectedLosses({ sound: 1, 'short-of-charge': 0, overcharged: 0, 'low-indoor-air': 0 }).map((l) => [
        l.act,
        l.loss,
      ]),
    )
    expect(losses).toEqual({ hold: 0, add: 5, recover: 5, 'low-indoor-air': 5 })
  })
})
