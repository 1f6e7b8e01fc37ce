import { describe, expect, it } from 'vitest'
import { plate, readings, sized, steady, weather } from '../test/sample.ts'
import { dose, learn, type Nameplate, type Observation, type System } from './index.ts'

const at = weather(32, 26, 18.5)
const CARE = { flammable: false }

function visit(nameplate: Nameplate, share: number) {
  const twin = sized(nameplate)
  const read = readings(twin, share, {}, at)
  const observation: Observation = {
    conditions: at,
    added_kg: 0,
    readings: {
      superheat_K: { value: read.superheat_K, sd: 0.6 },
      subcooling_K: { value: read.subcooling_K, sd: 0.6 },
      evaporating_K: { value: read.evaporating_K, sd: 0.5 },
      condensing_K: { value: read.condensing_K, sd: 0.5 },
    },
  }
  const learned = learn(twin, [observation])
  if (!learned) throw new Error('nothing learnt')
  return { twin, learned, observation }
}

function doseOf(nameplate: Nameplate, share: number, target: Parameters<typeof dose>[3], care = CARE) {
  const { twin, learned, observation } = visit(nameplate, share)
  const result = dose(twin, learned, observation, target, care)
  if (!result) throw new Error('no dose')
  return result
}

const toNameplate = { kind: 'charge', charge_kg: 3.2, sd_kg: 0 } as const

describe('dose', () => {
  it.each([0.75, 0.85, 1, 1.12])('[property] at %d of the charge the 90 %% interval holds what is missing', (share) => {
    const { low_kg, high_kg, toGo_kg } = doseOf(plate('fixed-orifice'), share, toNameplate)
    const missing = (1 - share) * 3.2
    expect(low_kg).toBeLessThan(missing)
    expect(high_kg).toBeGreaterThan(missing)
    expect((low_kg + high_kg) / 2).toBeCloseTo(toGo_kg, 9)
  })

  it('[property] to a subcooling it adds what brings the twin there', () => {
    const target = { kind: 'subcooling', value_K: 6, sd_K: 0.3 } as const
    const { twin, learned } = visit(plate('thermostatic'), 0.85)
    const { toGo_kg } = doseOf(plate('thermostatic'), 0.85, target)
    const health = { charge_kg: learned.charge_kg + toGo_kg, deviceShare: Math.exp(learned.parameters.device) }
    const reached = steady(learned.system, at, health).readings.subcooling_K + (learned.bias.subcooling_K ?? 0)
    expect(reached).toBeCloseTo(6, 1)
    expect(toGo_kg).toBeGreaterThan(0)
    expect(twin.rated.charge_kg).toBe(3.2)
  })

  it('[property] a superheat above its target asks for refrigerant, one below for recovery', () => {
    const target = (value_K: number) => ({ kind: 'superheat', value_K, sd_K: 1 }) as const
    expect(doseOf(plate('fixed-orifice'), 0.85, target(7)).toGo_kg).toBeGreaterThan(0)
    expect(doseOf(plate('fixed-orifice'), 1, target(12)).toGo_kg).toBeLessThan(0)
  })

  it('[property] an uncertain target widens the interval', () => {
    const width = (sd_K: number) => {
      const { low_kg, high_kg } = doseOf(plate('fixed-orifice'), 0.85, { kind: 'superheat', value_K: 7, sd_K })
      return high_kg - low_kg
    }
    expect(width(3)).toBeGreaterThan(width(0.3))
  })

  it('[property] is halved where the refrigerant burns and where the charge is critical, with the reason', () => {
    const burns = doseOf(plate('thermostatic'), 0.8, toNameplate, { flammable: true })
    expect(burns.step_kg).toBeCloseTo(burns.toGo_kg / 2, 9)
    expect(burns.reasons.map(({ template }) => template)).toContain('Half of it: the refrigerant burns')
    const critical = doseOf(plate('capillary'), 0.8, toNameplate)
    expect(critical.step_kg).toBeCloseTo(critical.toGo_kg / 2, 9)
    const plain = doseOf(plate('thermostatic'), 0.9, toNameplate)
    expect(plain.reasons).toEqual([])
    expect(plain.step_kg).toBeGreaterThanOrEqual(plain.toGo_kg / 2)
    expect(plain.step_kg).toBeLessThan(plain.toGo_kg)
    const over = doseOf(plate('thermostatic'), 1.15, toNameplate)
    expect(over.step_kg).toBe(over.toGo_kg)
  })

  it('[limit] starts with no more than 15 % of the nameplate charge, and none where the target cannot be reached', () => {
    expect(doseOf(plate('thermostatic'), 0.5, toNameplate).step_kg).toBeLessThanOrEqual(0.15 * 3.2)
    const {
      twin,
      learned,
      observation,
    }: { twin: System; learned: Parameters<typeof dose>[1]; observation: Observation } = visit(
      plate('thermostatic'),
      0.9,
    )
    expect(dose(twin, learned, observation, { kind: 'subcooling', value_K: 90, sd_K: 1 }, CARE)).toBeUndefined()
  })
})
