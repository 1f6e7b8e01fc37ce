import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plate, sized, steady, weather } from '../../test/sample.ts'
import { carriedOver, freshBelief, learn, type Observation, type System } from '../index.ts'
import { AS_SIZED, adjusted, healthOf, PARAMETER_NAMES, type Parameters } from './parameter.ts'

const twin = sized(plate('fixed-orifice'))
const at = weather(32, 26, 18.5)
const SDS = {
  superheat_K: 0.6,
  subcooling_K: 0.6,
  evaporating_K: 0.5,
  condensing_K: 0.5,
  dischargeTemperature_K: 2,
  supplyAir_K: 0.5,
}

/** Exact readings of a system with these hidden parameters, after adding a mass. */
function observed(system: System, hidden: Partial<Parameters>, added_kg: number): Observation {
  const parameters = { ...AS_SIZED, ...hidden }
  const { readings } = steady(adjusted(system, parameters), at, healthOf(system, parameters, added_kg))
  return {
    conditions: at,
    added_kg,
    readings: Object.fromEntries(
      Object.entries(SDS).map(([name, sd]) => [name, { value: readings[name as keyof typeof SDS], sd }]),
    ),
  }
}

function learned(observations: readonly Observation[], prior = freshBelief()) {
  const result = learn(twin, observations, prior)
  if (!result) throw new Error('nothing learnt')
  return result
}

describe('learning from readings', () => {
  it('[property] a charge that is off comes out within two of its standard deviations, from 70 % to 120 %', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.7, max: 1.2, noNaN: true }), (share) => {
        const { charge_kg, chargeSd_kg } = learned([observed(twin, { charge: Math.log(share) }, 0)])
        expect(Math.abs(charge_kg - share * 3.2)).toBeLessThan(2 * chargeSd_kg)
        expect(chargeSd_kg).toBeLessThan(0.25 * 3.2)
      }),
      { seed: 4, numRuns: 40 },
    )
  })

  it('[property] readings as the model has them leave it as it is', () => {
    const { parameters, misfit } = learned([observed(twin, {}, 0)])
    for (const name of PARAMETER_NAMES) expect(Math.abs(parameters[name])).toBeLessThan(1e-3)
    expect(misfit).toBeLessThan(1e-4)
  })

  it('[property] a weighed step narrows the charge and moves the coil volume towards the truth', () => {
    const hidden = { charge: Math.log(0.8), volume: 0.25 }
    const first = learned([observed(twin, hidden, 0)])
    const second = learned([observed(twin, hidden, 0), observed(twin, hidden, 0.3)])
    expect(second.chargeSd_kg).toBeLessThan(first.chargeSd_kg)
    expect(Math.abs(second.parameters.volume - 0.25)).toBeLessThan(Math.abs(first.parameters.volume - 0.25))
    expect(Math.abs(second.charge_kg - (0.8 * 3.2 + 0.3))).toBeLessThan(2 * second.chargeSd_kg)
  })

  it('[property] more readings never widen what is believed', () => {
    const full = observed(twin, { charge: -0.15 }, 0)
    const { superheat_K } = full.readings
    const few = learned([{ ...full, readings: superheat_K ? { superheat_K } : {} }])
    const many = learned([full])
    for (const [i, name] of PARAMETER_NAMES.entries()) {
      expect(many.covariance[i]![i]!, name).toBeLessThanOrEqual(few.covariance[i]![i]! * 1.05)
    }
  })

  it('[limit] without readings the prior comes back', () => {
    const { parameters, covariance } = learned([{ conditions: at, added_kg: 0, readings: {} }])
    const prior = freshBelief()
    for (const [i, name] of PARAMETER_NAMES.entries()) {
      expect(parameters[name]).toBeCloseTo(0, 9)
      expect(covariance[i]![i]!).toBeCloseTo(prior.covariance[i]![i]!, 6)
    }
  })

  it('[property] an earlier visit carries over everything but the charge, and sharpens the next one', () => {
    const hidden = { condenser: -0.15, evaporator: 0.1, charge: 0 }
    const visit = learned([observed(twin, hidden, 0)])
    const prior = carriedOver(visit)
    expect(prior.parameters.charge).toBe(0)
    expect(prior.covariance[0]![0]).toBe(freshBelief().covariance[0]![0])
    const leaked = observed(twin, { ...hidden, charge: Math.log(0.85) }, 0)
    const [fresh, informed] = [learned([leaked]), learned([leaked], prior)]
    expect(informed.chargeSd_kg).toBeLessThan(fresh.chargeSd_kg)
    expect(Math.abs(informed.charge_kg - 0.85 * 3.2)).toBeLessThan(Math.abs(fresh.charge_kg - 0.85 * 3.2) + 0.02)
  })
})

describe('the volume parameter', () => {
  it('[property] leaves the rated state and its charge where they are', () => {
    for (const volume of [-0.4, 0.3]) {
      const { readings } = steady(adjusted(twin, { ...AS_SIZED, volume }), twin.rated.conditions, {})
      expect(readings.superheat_K).toBeCloseTo(twin.rated.superheat_K, 4)
    }
  })
})
