import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CELSIUS, plate, sized, steady, weather } from '../test/sample.ts'
import { type Health, type Nameplate, type OutcomeKind, SOUND, type System, solve } from './index.ts'

const systems: readonly (readonly [string, System])[] = [
  ['fixed orifice', sized(plate('fixed-orifice'))],
  ['capillary tube', sized(plate('capillary'))],
  ['thermostatic valve', sized(plate('thermostatic'))],
  ['electronic valve', sized(plate('electronic'))],
  ['constant-pressure valve', sized(plate('automatic'))],
  ['receiver', sized(plate('thermostatic', { receiver: {}, charge_kg: 5.5 }))],
  ['accumulator', sized(plate('fixed-orifice', { accumulator: true }))],
]

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const sometimes = (min: number, max: number, sound: number) =>
  fc.oneof({ weight: 7, arbitrary: fc.constant(sound) }, { weight: 3, arbitrary: number(min, max) })

const anyHealth = fc.record({
  charge_kg: number(0.4, 1.6),
  restriction_Pa: sometimes(0, 1e6, 0),
  nonCondensable_Pa: sometimes(0, 3e5, 0),
  wear: sometimes(0, 0.4, 0),
  indoorAirShare: sometimes(0.3, 1.3, 1),
  outdoorAirShare: sometimes(0.3, 1.3, 1),
  deviceShare: sometimes(0.5, 1.5, 1),
})
const anyWeather = fc
  .tuple(number(10, 48), number(12, 26), number(1, 14))
  .map(([outdoor, wetBulb, above]) => weather(outdoor, wetBulb + above, wetBulb))

describe.each(systems)('a system with %s', (_, system) => {
  it('[property] solves 400 states of any season and several faults at once, finite, mass and energy closed to 1e-6', () => {
    fc.assert(
      fc.property(anyWeather, anyHealth, (at, drawn) => {
        const health: Health = { ...drawn, charge_kg: drawn.charge_kg * system.rated.charge_kg }
        const solution = solve(system, at, health)
        if (solution.kind === 'overfull') {
          expect(drawn.charge_kg).toBeGreaterThan(1.2)
          return
        }
        if (solution.kind === 'no-solution') throw new Error(`${solution.open} open by ${solution.by}`)
        const { cycle, readings } = solution
        expect(Object.values(readings).every(Number.isFinite)).toBe(true)
        expect(Math.abs(cycle.charge_kg / health.charge_kg - 1)).toBeLessThan(1e-6)
        expect(Math.abs(cycle.residuals.flow)).toBeLessThan(1e-6)

        // All heat and work across the boundary of the refrigerant: coils, both lines, compressor less its shell.
        const { suctionLine, liquidLine, compressor } = system
        const flow = cycle.compressor.flow_kg_s
        const shaft = cycle.compressor.power_W * (1 - compressor.heatLoss)
        const entering = Math.max(flow, 0.05 * suctionLine.ratedFlow_kg_s)
        const suctionGain =
          suctionLine.gain_W_K * (at.outdoor.dryBulb_K - readings.suctionTemperature_K) * (flow / entering)
        const liquidLoss = flow * (cycle.condenser.outletEnthalpy_J_kg - cycle.liquidLine.outletEnthalpy_J_kg)
        expect(liquidLine.loss_W_K).toBeGreaterThanOrEqual(0)
        const balance = cycle.evaporator.heat_W + suctionGain + shaft - cycle.condenser.heat_W - liquidLoss
        expect(Math.abs(balance / cycle.condenser.heat_W)).toBeLessThan(1e-6)
      }),
      { seed: 42, numRuns: 400 },
    )
  })
})

describe('where a search starts', () => {
  it('[property] makes no difference to where it ends', () => {
    for (const [, system] of systems) {
      const at = weather(38, 28, 21)
      const health = { ...SOUND, charge_kg: 0.85 * system.rated.charge_kg }
      const direct = steady(system, at, health)
      const neighbour = steady(system, weather(20, 22, 15), health)
      const led = solve(system, at, health, neighbour.unknowns)
      expect(led.kind === 'steady' && led.readings.superheat_K).toBeCloseTo(direct.readings.superheat_K, 4)
    }
  })
})

describe('outcomes have names', () => {
  const kinds = (
    nameplate: Nameplate,
    health: Partial<Health>,
    at = weather(35, 26.7, 19.4),
  ): readonly OutcomeKind[] => {
    const system = sized(nameplate)
    return steady(system, at, { charge_kg: system.rated.charge_kg, ...health }).outcomes.map(({ kind }) => kind)
  }
  const orifice = plate('fixed-orifice')
  const receiver = plate('thermostatic', { receiver: {}, charge_kg: 5.5 })

  it.each<[string, OutcomeKind, readonly OutcomeKind[]]>([
    ['an orifice with 30 % too much', 'flooded', kinds(orifice, { charge_kg: 4.2 })],
    ['an orifice 30 % short', 'flashing-at-device', kinds(orifice, { charge_kg: 2.2 })],
    ['a receiver system at a third of its charge', 'receiver-empty', kinds(receiver, { charge_kg: 2 })],
    ['a receiver system with nearly twice its charge', 'receiver-full', kinds(receiver, { charge_kg: 10 })],
    [
      'hardly any condenser air on a hot day',
      'high-pressure-trip',
      kinds(orifice, { outdoorAirShare: 0.3 }, weather(46, 28, 21)),
    ],
    ['hardly any refrigerant', 'low-pressure-trip', kinds(orifice, { charge_kg: 1 })],
    [
      'little indoor air at a cool evening',
      'frost',
      kinds(orifice, { indoorAirShare: 0.35, charge_kg: 2.4 }, weather(20, 22, 14)),
    ],
    ['a valve that is far too small a charge', 'valve-wide-open', kinds(plate('thermostatic'), { charge_kg: 1.6 })],
  ])('[property] %s: %s', (_, expected, found) => {
    expect(found).toContain(expected)
  })

  it('[limit] three times the charge does not fit, and says by how much', () => {
    const system = sized(orifice)
    const solution = solve(system, system.rated.conditions, { ...SOUND, charge_kg: 9.6 })
    expect(solution.kind).toBe('overfull')
    if (solution.kind === 'overfull') expect(solution.excess_kg).toBeGreaterThan(2)
  })

  it('[property] a sound system at its charge has none', () => {
    for (const [name, system] of systems) {
      if (name === 'automatic') continue
      expect(steady(system, system.rated.conditions, {}).outcomes).toEqual([])
    }
  })

  it('[limit] where no state exists it says which balance stayed open', () => {
    const system = sized(orifice)
    const solution = solve(system, system.rated.conditions, { ...SOUND, charge_kg: Number.NaN })
    expect(solution).toMatchObject({ kind: 'no-solution', by: Number.NaN })
  })
})

describe('readings hang together', () => {
  it('[property] the gauges bracket the air: evaporating below indoor wet bulb, condensing above outdoor air', () => {
    for (const [, system] of systems) {
      const { readings } = steady(system, weather(30, 25, 18), {})
      expect(readings.evaporating_K).toBeLessThan(18 + CELSIUS)
      expect(readings.condensing_K).toBeGreaterThan(30 + CELSIUS)
      expect(readings.supplyAir_K).toBeLessThan(25 + CELSIUS)
      expect(readings.leavingCondenserAir_K).toBeGreaterThan(30 + CELSIUS)
    }
  })
})
