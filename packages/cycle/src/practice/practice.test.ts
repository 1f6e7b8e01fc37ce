import { METRIC, render } from '@chargewright/quantity'
import { describe, expect, it } from 'vitest'
import { plate, sized } from '../../test/sample.ts'
import {
  type Action,
  act,
  debrief,
  drawScenario,
  GAUGE_NAMES,
  look,
  PRACTICE_FAULTS,
  type Practice,
  type PracticeFault,
  type Random,
  scenario,
  startPractice,
  wait,
} from '../index.ts'
import { practiceSystem } from './practice-system.ts'

/** Park and Miller's generator: tests repeat. */
function random(seed: number): Random {
  let state = seed
  return () => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
}

const orifice = sized(plate('fixed-orifice'))
const valve = sized(plate('thermostatic'))
const SETTLED_S = 3600

const begin = (share: number, fault: PracticeFault = 'none', system = orifice) =>
  startPractice(system, scenario(share * 3.2, fault, 0.8), system.rated.conditions, random(1))

function done(practice: Practice, ...actions: readonly Action[]): Practice {
  return actions.reduce((now, action) => {
    const next = act(now, action)
    if (!next.ok) throw new Error(JSON.stringify(next.error))
    return wait(next.value, SETTLED_S)
  }, practice)
}

describe('practice bench', () => {
  it('[property] readings start at rest, settle to the hidden state with their lags, and carry instrument error', () => {
    const early = wait(begin(0.8), 30)
    const late = wait(early, SETTLED_S)
    const later = wait(late, SETTLED_S)
    const truth = later.shown
    for (const name of GAUGE_NAMES) {
      expect(Math.abs(early.shown[name] - truth[name])).toBeGreaterThan(Math.abs(late.shown[name] - truth[name]))
      expect(late.shown[name] / truth[name]).toBeCloseTo(1, 4)
    }
    const read = look(late, random(2))
    expect(GAUGE_NAMES.some((name) => read[name] !== late.shown[name])).toBe(true)
    expect(Math.abs(read.suctionTemperature_K - late.shown.suctionTemperature_K)).toBeLessThan(1)
  })

  it('[property] time may pass in one go or in pieces', () => {
    const [once, pieces] = [wait(begin(0.9), 600), wait(wait(begin(0.9), 250), 350)]
    for (const name of GAUGE_NAMES) expect(pieces.shown[name]).toBeCloseTo(once.shown[name], 6)
  })

  it('[property] weighing in what is missing ends at the right charge without harm', () => {
    const end = debrief(done(begin(0.85), { kind: 'add', mass_kg: 0.48, phase: 'vapour' }))
    expect(end.startError).toBeCloseTo(-0.15, 9)
    expect(end.finalError).toBeCloseTo(0, 9)
    expect(end.isFaultGone).toBe(true)
    expect(end.harm).toEqual({
      liquidAtCompressor_s: 0,
      liquidIntoSuction_kg: 0,
      vented_kg: 0,
      overfilled_kg: 0,
      trips: 0,
    })
    const [line] = end.acts
    expect(line!.after.superheat_K!).toBeLessThan(line!.before.superheat_K!)
  })

  it('[property] every harm is counted: liquid into the running low side, flooding, venting, an overfilled cylinder, trips', () => {
    const flooded = done(begin(1.25), { kind: 'add', mass_kg: 0.3, phase: 'liquid' }, { kind: 'vent', mass_kg: 0.1 })
    expect(debrief(flooded).harm).toMatchObject({ liquidIntoSuction_kg: 0.3, vented_kg: 0.1 })
    expect(flooded.harm.liquidAtCompressor_s).toBeGreaterThan(0)

    const charged = done(begin(1), { kind: 'recover', mass_kg: 2 })
    const full = { ...charged, cylinder: { held_kg: 9.5, most_kg: 10 } }
    expect(done(full, { kind: 'recover', mass_kg: 1 }).harm.overfilled_kg).toBeCloseTo(0.5, 9)

    const tripped = wait(done(begin(1), { kind: 'add', mass_kg: 4, phase: 'vapour' }), 60)
    expect(tripped.isRunning).toBe(false)
    expect(tripped.harm.trips).toBe(1)
    const told = debrief(flooded).statements.map((statement) => render(statement, METRIC))
    expect(told.some((sentence) => sentence.includes('forbidden'))).toBe(true)
  })

  it.each<[PracticeFault, Action]>([
    ['low-indoor-air', { kind: 'clean-indoor-coil' }],
    ['poor-condenser-air', { kind: 'clean-condenser' }],
    ['restriction', { kind: 'change-drier' }],
    ['non-condensable', { kind: 'recover-evacuate-recharge', mass_kg: 3.2 }],
    ['worn-compressor', { kind: 'replace-compressor', mass_kg: 3.2 }],
  ])('[property] %s is gone after the act that mends it, and only then', (fault, remedy) => {
    const faulty = begin(1, fault)
    expect(debrief(faulty).isFaultGone).toBe(false)
    expect(debrief(done(faulty, remedy)).isFaultGone).toBe(true)
    expect(debrief(done(faulty, { kind: 'open-doors' })).isFaultGone).toBe(false)
  })

  it('[property] a stem turned back mends a valve setting; a fan set faster does not clean a coil', () => {
    const turned = startPractice(valve, scenario(3.2, 'valve-setting', 0.5), valve.rated.conditions, random(1))
    expect(debrief(turned).isFaultGone).toBe(false)
    expect(debrief(done(turned, { kind: 'turn-stem', turns: -2 })).isFaultGone).toBe(true)
    const dirty = begin(1, 'low-indoor-air')
    const cleaned = done(dirty, { kind: 'clean-indoor-coil' }, { kind: 'indoor-fan', share: 0.8 })
    expect(cleaned.hidden.health.indoorAirShare).toBeCloseTo(0.8, 12)
    expect(debrief(done(dirty, { kind: 'indoor-fan', share: 1.3 })).isFaultGone).toBe(false)
  })

  it('[property] a stem turned where it was right is told, and is no fault left', () => {
    const turned = startPractice(valve, scenario(3.2, 'none', 0), valve.rated.conditions, random(1))
    const end = debrief(done(turned, { kind: 'turn-stem', turns: 3 }))
    expect(end.isFaultGone).toBe(true)
    const told = end.statements.map((statement) => render(statement, METRIC)).join(' ')
    expect(told).toContain('3 turns in')
    expect(told).not.toContain('still there')
  })

  it.each([
    [1, 'at the right charge'],
    [1.001, 'at the right charge'],
    [1.1, '10 % more than is right'],
    [0.85, '15 % less than is right'],
  ])('[property] %d of the charge is told as %s', (share, words) => {
    const told = debrief(begin(share))
      .statements.map((statement) => render(statement, METRIC))
      .join(' ')
    expect(told).toContain(words)
  })

  it.each([
    ['fixed-orifice', false],
    ['capillary', false],
    ['thermostatic', false],
    ['thermostatic', true],
  ] as const)('[property] the %s system, with a receiver: %s, runs sound at its charge', (device, receiver) => {
    const system = practiceSystem(device, receiver)
    if (!system.ok) throw new Error(JSON.stringify(system.error))
    const { rated } = system.value
    const start = startPractice(system.value, scenario(rated.charge_kg, 'none', 0), rated.conditions, random(1))
    expect(debrief(wait(start, SETTLED_S)).harm).toEqual(debrief(start).harm)
    expect(system.value.receiver !== undefined).toBe(receiver)
  })

  it('[limit] what cannot be done is refused: no stem on an orifice, nothing recovered beyond what is there', () => {
    expect(act(begin(1), { kind: 'turn-stem', turns: 1 }).ok).toBe(false)
    expect(act(begin(1), { kind: 'recover', mass_kg: 5 }).ok).toBe(false)
    expect(act(begin(1), { kind: 'add', mass_kg: Number.NaN, phase: 'vapour' }).ok).toBe(false)
  })

  it('[property] drawn scenarios repeat with their seed, and bring every fault and the right charge now and then', () => {
    expect(drawScenario(valve, random(5))).toEqual(drawScenario(valve, random(5)))
    const source = random(9)
    const drawn = Array.from({ length: 300 }, () => drawScenario(valve, source))
    expect(new Set(drawn.map(({ fault }) => fault))).toEqual(new Set(Object.keys(PRACTICE_FAULTS)))
    const right = drawn.filter(({ health }) => health.charge_kg === 3.2).length
    expect(right).toBeGreaterThan(40)
    expect(right).toBeLessThan(120)
    expect(drawScenario(orifice, source).fault).not.toBe('valve-setting')
  })
})
