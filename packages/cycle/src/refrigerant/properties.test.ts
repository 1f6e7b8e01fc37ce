import { kelvin, pascal } from '@chargewright/quantity'
import { findRefrigerant, saturationAtPressure, stateAt } from '@chargewright/refrigerant'
import { describe, expect, it } from 'vitest'
import { propertiesOf } from './properties.ts'

// Oracle: the equations of state of the refrigerant package, asked between the nodes.
describe.each(['R-410A', 'R-22', 'R-134a', 'R-32', 'R-290', 'R-454B', 'R-407C'])('tables of %s', (name) => {
  const found = findRefrigerant(name)
  if (!found.ok) throw new Error(name)
  const refrigerant = found.value
  const made = propertiesOf(refrigerant)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const tables = made.value
  const { min_Pa, max_Pa } = tables.range
  const pressures = Array.from({ length: 23 }, (_, i) => min_Pa * (0.94 * (max_Pa / min_Pa)) ** ((i + 0.5) / 23))

  it('[oracle] saturation to 1 mK, 20 J/kg and 0.02 %, from −60 °C to 0.85 of the critical pressure', () => {
    for (const p of pressures) {
      const exact = saturationAtPressure(refrigerant, pascal(p))
      if (!exact.ok) throw new Error(String(p))
      const { bubble, dew } = exact.value
      const table = tables.saturated(p)
      expect(Math.abs(table.bubble_K - bubble.temperature_K)).toBeLessThan(1e-3)
      expect(Math.abs(table.dew_K - dew.temperature_K)).toBeLessThan(1e-3)
      expect(Math.abs(table.liquidEnthalpy_J_kg - bubble.enthalpy_J_kg)).toBeLessThan(20)
      expect(Math.abs(table.vapourEnthalpy_J_kg - dew.enthalpy_J_kg)).toBeLessThan(20)
      expect(Math.abs(table.liquidDensity_kg_m3 / bubble.density_kg_m3 - 1)).toBeLessThan(2e-4)
      expect(Math.abs(table.vapourDensity_kg_m3 / dew.density_kg_m3 - 1)).toBeLessThan(2e-4)
    }
  })

  it('[oracle] vapour to 0.05 K, 0.05 % in density and 25 J/kg along isentropes, up to 50 K above the dew point', () => {
    for (const p of pressures.filter((pressure) => pressure > 1e5 && pressure < 0.7 * max_Pa)) {
      const at = tables.saturated(p)
      for (const superheat of [1, 4, 10, 20, 35, 50]) {
        const exact = stateAt(refrigerant, pascal(p), kelvin(at.dew_K + superheat))
        if (!exact.ok) throw new Error(`${p} ${superheat}`)
        const { temperature_K, density_kg_m3, enthalpy_J_kg, entropy_J_kgK } = exact.value
        const table = tables.vapour(at, enthalpy_J_kg)
        expect(Math.abs(table.temperature_K - temperature_K)).toBeLessThan(0.05)
        expect(Math.abs(table.density_kg_m3 / density_kg_m3 - 1)).toBeLessThan(5e-4)
        expect(Math.abs(tables.isentropic(at, entropy_J_kgK) - enthalpy_J_kg)).toBeLessThan(25)
      }
    }
  })

  it('[property] pressure from dew temperature, from bubble temperature and liquid from enthalpy lead back', () => {
    for (const p of pressures) {
      const at = tables.saturated(p)
      expect(tables.dewPressure(at.dew_K) / p).toBeCloseTo(1, 4)
      expect(tables.bubblePressure(at.bubble_K) / p).toBeCloseTo(1, 4)
      expect(tables.liquid(at.liquidEnthalpy_J_kg).temperature_K).toBeCloseTo(at.bubble_K, 2)
    }
  })

  it('[limit] outside the tables every property stays finite, and vapour meets two-phase without a step', () => {
    for (const p of [1, 1e3, 2 * max_Pa, 1e9]) {
      const at = tables.saturated(p)
      expect(Object.values(at).every(Number.isFinite)).toBe(true)
      const edge = at.vapourEnthalpy_J_kg
      expect(tables.vapour(at, edge + 1e-6).temperature_K).toBeCloseTo(tables.vapour(at, edge - 1e-6).temperature_K, 5)
    }
  })
})

describe('refrigerants that do not condense in outdoor air', () => {
  it('[limit] R-744 is refused with the reason', () => {
    const found = findRefrigerant('R-744')
    if (!found.ok) throw new Error('R-744')
    const made = propertiesOf(found.value)
    expect(made.ok).toBe(false)
    if (!made.ok && made.error.kind !== 'out-of-range')
      expect(made.error.accepted).toContain('condenses in outdoor air')
  })
})
