import { describeProblem } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plate, sized, steady, tables } from '../../test/sample.ts'
import { type Nameplate, size } from '../index.ts'

const DEVICES = ['fixed-orifice', 'capillary', 'thermostatic', 'electronic', 'automatic'] as const

/** A nameplate that says nothing of its efficiency. */
function silent(device: Nameplate['device'], changed: Partial<Nameplate>): Nameplate {
  const { efficiency: _, ...rest } = plate(device)
  return { ...rest, ...changed }
}

describe('a sized system at its rating conditions and charge', () => {
  it.each(DEVICES)(
    '[property] %s: has the capacity, efficiency, superheat and subcooling of its nameplate',
    (device) => {
      const nameplate = plate(device, { subcooling_K: 5, superheat_K: 7 })
      const { readings, iterations } = steady(sized(nameplate), sized(nameplate).rated.conditions, {})
      expect(readings.capacity_W / nameplate.capacity_W).toBeCloseTo(1, 3)
      expect(readings.cop).toBeCloseTo(3.3, 0)
      expect(Math.abs(readings.cop / 3.3 - 1)).toBeLessThan(0.03)
      expect(readings.subcooling_K).toBeCloseTo(5, 1)
      const isFixed = device === 'fixed-orifice' || device === 'capillary'
      const superheat = isFixed ? readings.superheat_K : readings.coilSuperheat_K
      expect(Math.abs(superheat - 7)).toBeLessThan(0.1)
      expect(iterations).toBeLessThan(12)
    },
  )

  it('[property] any believable nameplate sizes, and solves where it was sized', () => {
    const any = fc.record({
      refrigerant: fc.constantFrom('R-410A', 'R-22', 'R-32', 'R-134a', 'R-407C', 'R-454B'),
      device: fc.constantFrom(...DEVICES),
      capacity_W: fc.double({ min: 3500, max: 17_500, noNaN: true }),
      cop: fc.double({ min: 2.7, max: 3.4, noNaN: true }),
      perWatt: fc.double({ min: 2.5e-4, max: 4e-4, noNaN: true }),
    })
    fc.assert(
      fc.property(any, ({ refrigerant, device, capacity_W, cop, perWatt }) => {
        const system = sized(
          plate(device, {
            properties: tables(refrigerant),
            capacity_W,
            charge_kg: perWatt * capacity_W,
            efficiency: { kind: 'cop', cop },
            subcooling_K: 4,
          }),
        )
        const { readings } = steady(system, system.rated.conditions, {})
        expect(readings.capacity_W / capacity_W).toBeCloseTo(1, 3)
      }),
      { seed: 8, numRuns: 100 },
    )
  })

  it.each([
    ['medium-temperature', 275.15, 'R-134a'],
    ['low-temperature', 253.15, 'R-404A'],
  ] as const)(
    '[property] %s refrigeration sizes without an efficiency, and evaporates below its box',
    (application, box, name) => {
      const system = sized(
        silent('thermostatic', {
          properties: tables(name),
          application,
          boxTemperature_K: box,
          capacity_W: 3000,
          charge_kg: 3,
          receiver: {},
        }),
      )
      const { readings, outcomes } = steady(system, system.rated.conditions, {})
      expect(readings.evaporating_K).toBeLessThan(box - 3)
      expect(outcomes.map(({ kind }) => kind)).not.toContain('frost')
    },
  )
})

describe('a nameplate that contradicts itself is refused with the reason', () => {
  const reason = (nameplate: Nameplate) => {
    const result = size(nameplate)
    return result.ok ? 'sized' : describeProblem(result.error)
  }

  it.each([
    [
      'an efficiency beyond reach',
      plate('fixed-orifice', { efficiency: { kind: 'cop', cop: 9 } }),
      /^rated efficiency: 9 W\/W is outside/,
    ],
    [
      'an efficiency of a failing unit',
      plate('fixed-orifice', { efficiency: { kind: 'cop', cop: 1.1 } }),
      /^rated efficiency: 1.1 W\/W is outside/,
    ],
    ['a charge of a refrigerator', plate('fixed-orifice', { charge_kg: 0.4 }), /^nameplate charge: 0.4 kg is outside/],
    ['a charge of a supermarket', plate('fixed-orifice', { charge_kg: 40 }), /^nameplate charge: 40 kg is outside/],
    ['more subcooling than the air allows', plate('fixed-orifice', { subcooling_K: 25 }), /^rated subcooling/],
    ['more superheat than the air allows', plate('fixed-orifice', { superheat_K: 24 }), /^rated superheat/],
  ] as const)('[limit] %s', (_, nameplate, expected) => {
    expect(reason(nameplate)).toMatch(expected)
  })

  it.each([
    ['capacity_W', /^capacity/],
    ['charge_kg', /^nameplate charge/],
    ['superheat_K', /^rated superheat/],
    ['subcooling_K', /^rated subcooling/],
    ['lineLength_m', /^line length/],
  ] as const)('[limit] a %s that is negative, without bound or no number', (field, named) => {
    for (const value of [-1, Number.POSITIVE_INFINITY, Number.NaN]) {
      expect(reason({ ...plate('fixed-orifice'), [field]: value })).toMatch(named)
    }
  })

  it('[limit] no charge and no capacity at all', () => {
    expect(reason(plate('fixed-orifice', { charge_kg: 0 }))).toMatch(/^nameplate charge/)
    expect(reason(plate('fixed-orifice', { capacity_W: 0 }))).toMatch(/^capacity/)
  })
})

describe('what stands for a missing efficiency', () => {
  it('[property] compressor power is taken at its word, rated-load current only as a hint', () => {
    const efficiencyOf = (efficiency: Nameplate['efficiency']) => {
      const system = sized(silent('fixed-orifice', efficiency ? { efficiency } : {}))
      return steady(system, system.rated.conditions, {}).readings.cop
    }
    const habit = efficiencyOf(undefined)
    expect(efficiencyOf({ kind: 'compressor-power', power_W: 2200 })).toBeGreaterThan(habit)
    const hinted = efficiencyOf({ kind: 'rated-load-current', current_A: 14, voltage_V: 230, phases: 1 })
    const stated = efficiencyOf({ kind: 'compressor-power', power_W: 0.75 * 0.9 * 14 * 230 })
    expect(Math.abs(hinted - habit)).toBeLessThan(Math.abs(stated - habit))
  })
})
