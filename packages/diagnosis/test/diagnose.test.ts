import { describe, expect, it, test } from 'vitest'
import {
  CAUSES,
  type Cause,
  type Diagnosis,
  diagnose,
  type Memory,
  OBSERVABLE_NAMES,
  type ReadingSet,
  SHIPPED_CALIBRATION,
} from '../src/index.ts'
import { type Device, diagnosed, EXACT, family, probabilityOf, RIGHT_KG, reading } from './sample.ts'

/** A clear case of each cause; the twin reads itself, so only a cause that hides behind another may lose. */
const CLEAR: readonly (readonly [Device, Cause, number])[] = [
  ['fixed-orifice', 'short-of-charge', -0.25],
  ['capillary', 'short-of-charge', -0.25],
  ['thermostatic', 'short-of-charge', -0.3],
  ['fixed-orifice', 'overcharged', 0.25],
  ['thermostatic', 'overcharged', 0.25],
  ['fixed-orifice', 'low-indoor-air', 0.45],
  ['thermostatic', 'low-indoor-air', 0.45],
  ['fixed-orifice', 'poor-condenser-air', 0.45],
  ['capillary', 'poor-condenser-air', 0.45],
  ['fixed-orifice', 'liquid-line-restriction', 0.45],
  ['fixed-orifice', 'weak-compressor', 0.3],
  ['thermostatic', 'valve-feeds-too-little', 12],
  ['thermostatic', 'valve-feeds-too-much', -9],
]

describe('a clear case', () => {
  test.each(CLEAR)('[property] behind a %s, %s is named', (device, cause, severity) => {
    const found = diagnosed(device, reading(device, { [cause]: severity }))
    expect(found.singles[0]!.cause).toBe(cause)
    expect(found.singles[0]!.probability).toBeGreaterThan(0.5)
  })

  test.each(['fixed-orifice', 'capillary', 'thermostatic'] as const)(
    '[property] a sound %s is called sound',
    (device) => {
      const { singles, charge } = diagnosed(device, reading(device, {}))
      expect(singles[0]!.cause).toBe('sound')
      expect(Math.abs(charge.mean)).toBeLessThan(0.03)
    },
  )

  it('[property] gas is told from overcharge by the pressure at rest', () => {
    const running = reading('fixed-orifice', { 'non-condensables': 0.12 })
    const ambient_K = running.outdoor_K
    const { properties } = family('fixed-orifice').nominal
    const at = (excess_K: number): ReadingSet => ({
      ...running,
      standstill: { pressure_Pa: properties.bubblePressure(ambient_K + excess_K), ambient_K },
    })
    const ratio = (set: ReadingSet) => {
      const found = diagnosed('fixed-orifice', set)
      return probabilityOf(found, 'non-condensables') / probabilityOf(found, 'overcharged')
    }
    expect(ratio(at(3))).toBeGreaterThan(5 * ratio(running))
    expect(ratio(at(0))).toBeLessThan(ratio(running) / 5)
  })
})

describe('what must not be named', () => {
  test.each([
    ['short-of-charge', { 'liquid-line-restriction': 0.45 }],
    ['overcharged', { 'poor-condenser-air': 0.45 }],
    ['low-indoor-air', { overcharged: 0.25 }],
    ['poor-condenser-air', { 'short-of-charge': -0.25 }],
    ['liquid-line-restriction', { 'short-of-charge': -0.25 }],
    ['non-condensables', { 'low-indoor-air': 0.4 }],
    ['weak-compressor', { 'poor-condenser-air': 0.4 }],
  ] as const)('[property] %s is unlikely where the twin has %o', (cause, truth) => {
    expect(probabilityOf(diagnosed('fixed-orifice', reading('fixed-orifice', truth)), cause)).toBeLessThan(0.1)
  })
})

describe('what cannot be told', () => {
  it('[property] a little too much charge and a little gas look alike while it runs', () => {
    const found = diagnosed('fixed-orifice', reading('fixed-orifice', { 'non-condensables': 0.08 }))
    expect(found.singles[0]!.probability).toBeLessThan(0.8)
  })

  it('[property] a valve hides a charge that is a little short', () => {
    const found = diagnosed('thermostatic', reading('thermostatic', { 'short-of-charge': -0.07 }))
    expect(found.singles[0]!.probability).toBeLessThan(0.8)
  })
})

describe('the answer as a whole', () => {
  const short = reading('fixed-orifice', { 'short-of-charge': -0.2 })

  it('[property] probabilities sum to one, each between nought and one', () => {
    const { singles, pairs, pairShare } = diagnosed('fixed-orifice', short)
    for (const list of [singles, pairs]) {
      expect(list.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9)
      for (const { probability } of list) expect(probability).toBeGreaterThanOrEqual(0)
    }
    expect(pairShare).toBeGreaterThan(0)
    expect(pairShare).toBeLessThan(1)
    expect(singles.map(({ cause }) => cause).toSorted()).toEqual(
      CAUSES.filter((cause) => !cause.startsWith('valve')).toSorted(),
    )
  })

  it('[property] the charge that is missing lies in its interval', () => {
    const { charge } = diagnosed('fixed-orifice', short)
    expect(charge.low).toBeLessThan(-0.2)
    expect(charge.high).toBeGreaterThan(-0.2)
    expect(Math.abs(charge.mean + 0.2)).toBeLessThan(0.08)
  })

  it('[property] a cause that is ruled out is not weighed, alone or in a pair, and the rest keep their proportions', () => {
    const ruledOut = ['low-indoor-air'] as const
    const [all, left] = [diagnosed('fixed-orifice', short), diagnosed('fixed-orifice', short, { ruledOut })]
    expect(left.singles.map(({ cause }) => cause)).not.toContain('low-indoor-air')
    expect(left.pairs.flatMap(({ causes }) => causes)).not.toContain('low-indoor-air')
    const ratio = (of: Diagnosis) => probabilityOf(of, 'overcharged') / probabilityOf(of, 'short-of-charge')
    expect(ratio(left)).toBeCloseTo(ratio(all), 9)
  })

  it('[property] the order in which readings are listed does not matter', () => {
    const backwards = Object.fromEntries(Object.entries(short).toReversed()) as unknown as ReadingSet
    expect(diagnosed('fixed-orifice', backwards)).toEqual(diagnosed('fixed-orifice', short))
  })

  it('[property] fewer readings leave the charge wider', () => {
    const { liquidPressure_Pa: _p, liquidLine_K: _t, condenserLeavingAir_K: _a, ...few } = short
    const sd = (set: ReadingSet) =>
      diagnosed('fixed-orifice', set).singles.find((s) => s.cause === 'short-of-charge')!.charge.sd
    expect(sd(few)).toBeGreaterThan(sd(short))
    expect(probabilityOf(diagnosed('fixed-orifice', few), 'short-of-charge')).toBeLessThan(
      probabilityOf(diagnosed('fixed-orifice', short), 'short-of-charge'),
    )
  })

  it('[property] every observable has an outlook, what was read with its value', () => {
    const { readings } = diagnosed('fixed-orifice', short)
    expect(readings.map(({ observable }) => observable).toSorted()).toEqual(OBSERVABLE_NAMES.toSorted())
    expect(readings.filter(({ read }) => read === undefined).map(({ observable }) => observable)).toEqual([
      'standstill',
    ])
    const subcooling = readings.find(({ observable }) => observable === 'subcooling')!
    expect(subcooling.expected['liquid-line-restriction']!.mean).toBeGreaterThan(subcooling.read! + 2)
  })

  it('[property] a weighed step narrows the charge, and is in it', () => {
    const added = 0.3
    const after = reading('fixed-orifice', { 'short-of-charge': -0.2 }, undefined, added)
    const both = diagnosed('fixed-orifice', [
      { readings: short, added_kg: 0 },
      { readings: after, added_kg: added },
    ])
    const before = diagnosed('fixed-orifice', short)
    expect(both.charge.high - both.charge.low).toBeLessThan(before.charge.high - before.charge.low)
    expect(Math.abs(both.charge.mean + 0.2 - added / RIGHT_KG)).toBeLessThan(0.06)
    expect(RIGHT_KG * 0.2).toBeGreaterThan(added)
  })

  it('[property] a short system that was filled past its charge is overcharged now', () => {
    const sets = [0, 0.4 * RIGHT_KG].map((added_kg) => ({
      readings: reading('fixed-orifice', { 'short-of-charge': -0.2 }, undefined, added_kg),
      added_kg,
    }))
    expect(diagnosed('fixed-orifice', sets).singles[0]!.cause).toBe('overcharged')
    expect(diagnosed('fixed-orifice', sets.slice(0, 1)).singles[0]!.cause).toBe('short-of-charge')
  })

  it('[property] an earlier visit to a system makes the next one surer', () => {
    const { memory } = diagnosed(
      'fixed-orifice',
      reading('fixed-orifice', {}, { outdoor_C: 28, returnAir_C: 24, wetBulb_C: 17 }),
    )
    const slightly = reading('fixed-orifice', { 'short-of-charge': -0.12 })
    const sd = (known?: Memory) =>
      diagnosed('fixed-orifice', slightly, known ? { memory: known } : {}).singles.find(
        (s) => s.cause === 'short-of-charge',
      )!
    expect(memory.visits).toBe(1)
    expect(sd(memory).charge.sd).toBeLessThan(sd().charge.sd)
    expect(sd(memory).probability).toBeGreaterThan(sd().probability)
  })

  it('[property] readings that fit nothing are called unexplained, those of a fault are not', () => {
    const { misfit } = diagnosed('fixed-orifice', { ...short, liquidPressure_Pa: 2 * short.liquidPressure_Pa! })
    expect(misfit.unexplained).toBe(true)
    expect(diagnosed('fixed-orifice', short).misfit.unexplained).toBe(false)
  })
})

describe('what its maker prints', () => {
  const sound = reading('fixed-orifice', {})
  const { properties } = family('fixed-orifice').nominal
  const superheat_K = sound.suctionLine_K! - properties.saturated(sound.suctionPressure_Pa!).dew_K
  const asRead = { maker: { superheat: { mean: superheat_K, sd: 1.5 } }, calibration: SHIPPED_CALIBRATION }
  const tenDrier = { maker: { superheat: { mean: superheat_K + 10, sd: 1.5 } }, calibration: SHIPPED_CALIBRATION }
  const without = { calibration: SHIPPED_CALIBRATION }

  it('[property] makes a unit that reads so surer to be sound, and one that reads wetter likelier to be overcharged', () => {
    const of = (knowledge: typeof without, cause: Cause) =>
      probabilityOf(diagnosed('fixed-orifice', sound, knowledge), cause)
    expect(of(asRead, 'sound')).toBeGreaterThan(of(without, 'sound'))
    expect(of(tenDrier, 'overcharged')).toBeGreaterThan(of(without, 'overcharged'))
    expect(of(tenDrier, 'sound')).toBeLessThan(of(without, 'sound') / 2)
  })

  it('[limit] says nothing where it is not held to anything, and nothing of the next visit', () => {
    const vague = { ...without, maker: { superheat: { mean: superheat_K, sd: 1e6 } } }
    const [told, untold] = [vague, without].map((knowledge) => diagnosed('fixed-orifice', sound, knowledge))
    for (const { cause, probability } of untold!.singles)
      expect(probabilityOf(told!, cause)).toBeCloseTo(probability, 6)
    expect(told!.memory.mean[0]).toBeCloseTo(untold!.memory.mean[0]!, 6)
    const spread = ({ memory }: Diagnosis, name: string) =>
      memory.covariance[memory.names.indexOf(name)]![memory.names.indexOf(name)]!
    const firm = diagnosed('fixed-orifice', sound, asRead)
    expect(spread(firm, 'structure.superheat')).toBeGreaterThan(0.9 * spread(untold!, 'structure.superheat'))
  })
})

describe('what is refused', () => {
  const sets = [{ readings: reading('fixed-orifice', {}), added_kg: 0 }]

  it('[limit] a calibration or a memory made for another twin', () => {
    const stranger = { ...EXACT, twin: 'another' }
    expect(diagnose(family('fixed-orifice'), sets, { calibration: stranger })).toMatchObject({
      ok: false,
      error: { field: 'calibration or memory', value: 'for version another' },
    })
    const memory = { ...diagnosed('fixed-orifice', sets).memory, twin: 'another' }
    expect(diagnose(family('fixed-orifice'), sets, { calibration: EXACT, memory }).ok).toBe(false)
  })

  it('[limit] nothing read of the circuit, and weather that cannot be', () => {
    const { outdoor_K, returnAir_K, returnWetBulb_K } = sets[0]!.readings
    const air = { outdoor_K, returnAir_K, returnWetBulb_K }
    expect(diagnose(family('fixed-orifice'), [{ readings: air, added_kg: 0 }], { calibration: EXACT }).ok).toBe(false)
    const wetter = { ...sets[0]!.readings, returnWetBulb_K: returnAir_K + 5 }
    expect(diagnose(family('fixed-orifice'), [{ readings: wetter, added_kg: 0 }], { calibration: EXACT }).ok).toBe(
      false,
    )
  })
})
