import { describe, expect, it } from 'vitest'
import type { Conditions, Health, Readings, System } from '../src/index.ts'
import { olderUnit, plate, readings, sized, weather } from './sample.ts'

// Published effects of charge and of other faults: laboratory and field studies of air conditioners, and two families of
// published fits to such data. READ: Kim and Braun 2012 (IIR summary); ASHRAE RP-1173 (summary); Farzad 1990 (thesis
// abstract); Goswami 1997; Grace 2005; NIST TN 1848 (abstract); fit A, the NIST form in an open hourly simulation; fit B,
// the Cheung and Braun form in an open fault library. COMPUTED: the fits evaluated. The ranges are theirs, not ours.
const newer = sized(plate('fixed-orifice'))
const older = sized(olderUnit())
const units = [
  ['R-410A, scroll', newer],
  ['R-22, reciprocating', older],
] as const

/** Capacity, power and efficiency over those of the sound unit in the same weather, all fans counted. */
function ratios(system: System, share: number, fault: Partial<Health> = {}, at?: Conditions) {
  const [now, sound] = [readings(system, share, fault, at), readings(system, 1, {}, at)]
  return {
    capacity: now.capacity_W / sound.capacity_W,
    power: now.power_W / sound.power_W,
    cop: now.cop / sound.cop,
  }
}

/** The same as the fits have it: the indoor fan is no part of an hourly simulation's energy input ratio (REMEMBERED). */
function withoutIndoorFan(system: System, share: number, fault: Partial<Health> = {}, at?: Conditions) {
  const { fan_W } = system.evaporator
  const of = ({ capacity_W, power_W }: Readings) => ({ capacity: capacity_W + fan_W, power: power_W - fan_W })
  const [now, sound] = [of(readings(system, share, fault, at)), of(readings(system, 1, {}, at))]
  const [capacity, power] = [now.capacity / sound.capacity, now.power / sound.power]
  return { capacity, power, cop: capacity / power }
}

function expectBetween(value: number, low: number, high: number): void {
  expect(value).toBeGreaterThanOrEqual(low)
  expect(value).toBeLessThanOrEqual(high)
}

describe.each(units)('a fixed-orifice air conditioner, %s', (_, system) => {
  it('[published] A1: a quarter short loses 12 % to 25 % of its capacity and 8 % to 20 % of its efficiency', () => {
    const { capacity, cop } = ratios(system, 0.75)
    expectBetween(capacity, 0.75, 0.88)
    expectBetween(cop, 0.8, 0.92)
  })

  it('[published] A4: the efficiency is flat around the charge: nowhere 1 % better, 3.5 % worse at most within 10 %', () => {
    // Goswami saw +2 % at −10 %; the fits −1.5 % and −3.5 % there, −0.3 % and −2.8 % at +10 %. The model has its best at
    // +4 % (R-410A) and +7 % (R-22), where the last of the liquid still boils on the motor's heat.
    const cop = [0.8, 0.85, 0.9, 0.95, 1, 1.03, 1.05, 1.07, 1.1, 1.15, 1.2].map((share) => ratios(system, share).cop)
    expect(Math.max(...cop)).toBeLessThan(1.01)
    for (const share of [0.9, 1.1]) expectBetween(ratios(system, share).cop, 0.965, 1.02)
    expectBetween(ratios(system, 0.9).capacity, 0.94, 0.97)
  })

  it('[published] A4: a fifth too much costs up to 4.3 % of the efficiency, between the fits', () => {
    // Fit A: capacity +2.1 %, efficiency −1.4 %; fit B: −7.4 %, −4.3 %. An orifice at +15 %: less than −2 % (Home Energy).
    const { capacity, cop } = withoutIndoorFan(system, 1.2)
    expectBetween(capacity, 0.926, 1.03)
    expectBetween(cop, 0.957, 0.995)
    expectBetween(ratios(system, 1.15).cop, 0.98, 1.01)
  })

  it('[published] A5: overcharge shows as discharge pressure and subcooling, the suction pressure hardly moves', () => {
    const [over, right] = [readings(system, 1.3), readings(system, 1)]
    const discharge = over.dischargePressure_Pa - right.dischargePressure_Pa
    const suction = over.suctionPressure_Pa - right.suctionPressure_Pa
    expect(discharge / right.dischargePressure_Pa).toBeGreaterThan(0.05)
    expect(Math.abs(suction)).toBeLessThan(discharge / 4)
    expect(over.evaporating_K - right.evaporating_K).toBeLessThan(1.5)
    expect(over.subcooling_K - right.subcooling_K).toBeGreaterThan(3)
    expect(Math.abs(over.supplyAir_K - right.supplyAir_K)).toBeLessThan(2)
  })

  it('[published] A6: undercharge lowers the power: at −30 % to 0.90 to 0.97', () => {
    // The two fits: 0.918 and 0.963.
    expectBetween(withoutIndoorFan(system, 0.7).power, 0.9, 0.97)
  })

  it('[published] A7: how much capacity a 30 % shortage costs hardly depends on the outdoor temperature', () => {
    // Fit A: 0.795, 0.798, 0.800; fit B: 0.775, 0.800, 0.819 at 27.8, 35 and 40.6 °C.
    for (const outdoor of [27.8, 35, 40.6]) {
      expectBetween(withoutIndoorFan(system, 0.7, {}, weather(outdoor, 26.7, 19.4)).capacity, 0.77, 0.84)
    }
  })

  it('[published] A8: the loss at −20 % grows with the wet bulb', () => {
    // Fit B: 0.924, 0.900, 0.881, 0.861 at 14, 17, 19.4 and 22 °C.
    const published = [
      [14, 0.924],
      [17, 0.9],
      [19.4, 0.881],
      [22, 0.861],
    ] as const
    const model = published.map(([wetBulb]) => withoutIndoorFan(system, 0.8, {}, weather(35, 26.7, wetBulb)).capacity)
    for (const [i, [, value]] of published.entries()) expectBetween(model[i]!, value - 0.04, value + 0.04)
    expect(model[3]!).toBeLessThan(model[1]!)
  })

  it('[published] A9: less condenser air costs power first, then efficiency', () => {
    // Fit B for units of a COP of 3.7 to 4.7 without their indoor fan: at −30 % 1.00, +8.6 %, −7.8 %; at −50 % 0.96,
    // +22 %, −21 %. The unit of that kind has +7.1 % and +17 %, the older one, which is outside the fit, +6.5 % and +14 %.
    const third = withoutIndoorFan(system, 1, { outdoorAirShare: 0.7 })
    const half = withoutIndoorFan(system, 1, { outdoorAirShare: 0.5 })
    const isFitted = system === newer
    expectBetween(third.capacity, 0.96, 1.02)
    expectBetween(third.power, isFitted ? 1.065 : 1.06, 1.11)
    expectBetween(third.cop, 0.9, 0.95)
    expectBetween(half.capacity, 0.92, 1)
    expectBetween(half.power, isFitted ? 1.16 : 1.13, 1.25)
    expectBetween(half.cop, 0.77, 0.83)
  })

  it('[published] A9: a restriction costs capacity and hardly any power', () => {
    // Fit B at its level of 20 %: −11 %, 0, −11 %. Its level is read as a share of the pressure difference of the system.
    const { dischargePressure_Pa, suctionPressure_Pa } = readings(system, 1)
    const drop = 0.2 * (dischargePressure_Pa - suctionPressure_Pa)
    const { capacity, power, cop } = withoutIndoorFan(system, 1, { restriction_Pa: drop })
    expectBetween(capacity, 0.85, 0.97)
    expectBetween(power, 0.96, 1.01)
    expectBetween(cop, 0.87, 0.98)
    expect(1 - capacity).toBeGreaterThan(2 * (1 - power))
  })

  it('[published] A9: gas that does not condense costs power and efficiency, not capacity', () => {
    // Fit B at 0.4 of an atmospheric fill: capacity +3 % (an artefact), power +7 %, efficiency −4 %. That gas, gathered
    // in the free part of the condenser, is about 1.5 atmospheres there.
    const { capacity, power, cop } = withoutIndoorFan(system, 1, { nonCondensable_Pa: 150e3 })
    expectBetween(capacity, 0.98, 1.04)
    expectBetween(power, 1.03, 1.1)
    expectBetween(cop, 0.92, 0.99)
  })

  it('[published] A9: a fifth less indoor air costs 2 % to 6 % of the capacity', () => {
    // The published flow curve 0.7187 + 0.4180 f − 0.1366 f² gives −3.4 %; fit B's −14 % is not believed.
    expectBetween(ratios(system, 1, { indoorAirShare: 0.8 }).capacity, 0.94, 0.98)
  })

  it('[published] A10: low indoor air with undercharge is weaker than both losses added', () => {
    const air = 1 - ratios(system, 1, { indoorAirShare: 0.7 }).capacity
    const charge = 1 - ratios(system, 0.8).capacity
    const both = 1 - ratios(system, 0.8, { indoorAirShare: 0.7 }).capacity
    expect(both).toBeLessThan(air + charge)
    expect(both).toBeGreaterThan(Math.max(air, charge))
  })

  it('[published] A10: four faults together reach −42 % of capacity and −39 % of efficiency', () => {
    const fault = { indoorAirShare: 0.55, outdoorAirShare: 0.5, nonCondensable_Pa: 80e3 }
    const { capacity, cop } = ratios(system, 0.5, fault)
    expect(capacity).toBeLessThan(0.58)
    expect(cop).toBeLessThan(0.61)
  })
})

describe('devices against each other', () => {
  const loss = (device: 'capillary' | 'fixed-orifice' | 'thermostatic', share: number) =>
    1 - ratios(sized(plate(device)), share).capacity

  it('[published] A2: an orifice leaves the flat part at −10 %, a thermostatic valve only at −20 %', () => {
    expect(loss('fixed-orifice', 0.9)).toBeGreaterThan(0.035)
    expect(loss('thermostatic', 0.9)).toBeLessThan(0.025)
    expect(loss('thermostatic', 0.8)).toBeLessThan(0.06)
    expect(loss('thermostatic', 0.7)).toBeGreaterThan(0.08)
  })

  it('[published] A3: at −20 % a capillary loses most, then the orifice, a thermostatic valve least', () => {
    expect(loss('capillary', 0.8)).toBeGreaterThan(loss('fixed-orifice', 0.8))
    expect(loss('fixed-orifice', 0.8)).toBeGreaterThan(1.5 * loss('thermostatic', 0.8))
  })

  it('[published] A3: a thermostatic valve at −20 % and +20 % loses a few percent of efficiency', () => {
    // Farzad: −2 % and −8 % seasonal. At one condition the model has −2.2 % and −2.8 %: nothing in it cycles.
    const system = sized(plate('thermostatic'))
    expectBetween(ratios(system, 0.8).cop, 0.95, 1)
    expectBetween(ratios(system, 1.2).cop, 0.92, 0.99)
  })
})
