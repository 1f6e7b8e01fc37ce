import { kelvin, pascal } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computed } from '../../test/computed.ts'
import { type Refrigerant, refrigerantNames } from '../index.ts'
import { saturationAtPressure, saturationAtTemperature } from '../saturation.ts'
import { stateAt, stateAtQuality } from '../state.ts'
import { buildTable } from './build-table.ts'
import { crc32 } from './crc32.ts'
import { entropyAt } from './entropy-at.ts'
import { bubblePressure, dewPressure, enthalpyAtTemperature, vapourEnthalpyAtEntropy } from './invert.ts'
import { lookUp, tableState } from './look-up.ts'
import type { PropertyTable } from './property-table.ts'
import { bubbleTemperature, dewTemperature } from './saturation-curve.ts'
import { tableFromBytes, tableToBytes } from './table-file.ts'

// What the tables promise against the exact engine, over their whole range.
const SATURATION_K = 1e-4
const TEMPERATURE_K = 0.01
const DENSITY = 3e-4
const ENTROPY_J_KGK = 0.02

const everyName = refrigerantNames()
const out = tableState()

function tableOf(refrigerant: Refrigerant): PropertyTable {
  const table = buildTable(refrigerant)
  if (!table.ok) throw new Error(JSON.stringify(table.error))
  return table.value
}

/** A fixed spread of numbers in 0 … 1, the same on every run. */
const spread = (count: number, stride: number) => Array.from({ length: count }, (_, k) => ((k + 0.5) * stride) % 1)

describe('property table', () => {
  it.each(everyName)('[property] %s agrees with the equations of state everywhere in its range', (name) => {
    const refrigerant = computed(name)
    const table = tableOf(refrigerant)
    const { minPressure_Pa, maxPressure_Pa } = table
    const across = spread(24, 0.754877666)
    const along = spread(24, 0.569840291)
    for (const [k, u] of across.entries()) {
      // Every fourth place lies in the last tenth below the highest pressure, where everything bends most.
      const p = k % 4 === 0 ? maxPressure_Pa * (1 - 0.1 * u) : minPressure_Pa * (maxPressure_Pa / minPressure_Pa) ** u
      const lines = saturationAtPressure(refrigerant, pascal(p))
      if (!lines.ok) throw new Error(JSON.stringify(lines.error))
      const { bubble, dew } = lines.value
      expect(Math.abs(bubbleTemperature(table, p) - bubble.temperature_K)).toBeLessThan(SATURATION_K)
      expect(Math.abs(dewTemperature(table, p) - dew.temperature_K)).toBeLessThan(SATURATION_K)
      const v = along[k]! ** (k % 2 === 0 ? 4 : 1)
      const cold = Math.max(bubble.temperature_K - 60 * v, refrigerant.range.minTemperature_K)
      const hot = Math.min(dew.temperature_K + 100 * v, refrigerant.range.maxTemperature_K)
      for (const T of [cold, hot]) {
        const exact = stateAt(refrigerant, pascal(p), kelvin(T))
        if (!exact.ok || exact.value.phase === 'two-phase') continue
        const { enthalpy_J_kg, density_kg_m3, entropy_J_kgK } = exact.value
        expect(lookUp(table, p, enthalpy_J_kg, out), `${p} Pa, ${T} K`).toBe(true)
        expect(out.region).toBe(exact.value.phase)
        expect(Math.abs(out.temperature_K - T)).toBeLessThan(TEMPERATURE_K)
        expect(Math.abs(out.density_kg_m3 / density_kg_m3 - 1)).toBeLessThan(DENSITY)
        expect(Math.abs(entropyAt(table, p, enthalpy_J_kg) - entropy_J_kgK)).toBeLessThan(ENTROPY_J_KGK)
      }
      if (k % 4 !== 0) continue
      const wet = stateAtQuality(refrigerant, pascal(p), along[k]!)
      if (!wet.ok) throw new Error(JSON.stringify(wet.error))
      expect(lookUp(table, p, wet.value.enthalpy_J_kg, out)).toBe(true)
      expect(out.region).toBe('two-phase')
      expect(Math.abs(out.temperature_K - wet.value.temperature_K)).toBeLessThan(TEMPERATURE_K)
      expect(Math.abs(out.density_kg_m3 / wet.value.density_kg_m3 - 1)).toBeLessThan(DENSITY)
      expect(Math.abs(out.quality - along[k]!)).toBeLessThan(4e-3)
      expect(Math.abs(entropyAt(table, p, wet.value.enthalpy_J_kg) - wet.value.entropy_J_kgK)).toBeLessThan(
        ENTROPY_J_KGK,
      )
    }
    expect(tableToBytes(table).length).toBeLessThan(70_000)
  })

  it('[property] forward and back returns the start: T and h, s and h, T and p', () => {
    for (const name of ['R-290', 'R-410A', 'R-455A']) {
      const table = tableOf(computed(name))
      fc.assert(
        fc.property(
          fc.double({ min: 0, max: 1, noNaN: true }),
          fc.double({ min: 0.001, max: 0.99, noNaN: true }),
          (u, v) => {
            const p = table.minPressure_Pa * (table.maxPressure_Pa / table.minPressure_Pa) ** u
            const T = dewTemperature(table, p)
            if (Number.isNaN(T)) return
            expect(dewPressure(table, T) / p).toBeCloseTo(1, 9)
            expect(bubblePressure(table, bubbleTemperature(table, p)) / p).toBeCloseTo(1, 9)
            for (const at of [T + 100 * v, bubbleTemperature(table, p) - 10 * v]) {
              const h = enthalpyAtTemperature(table, p, at)
              if (Number.isNaN(h)) continue
              expect(lookUp(table, p, h, out)).toBe(true)
              expect(Math.abs(out.temperature_K - at)).toBeLessThan(1e-4)
            }
            const h = enthalpyAtTemperature(table, p, T + 100 * v)
            expect(vapourEnthalpyAtEntropy(table, p, entropyAt(table, p, h))).toBeCloseTo(h, 1)
          },
        ),
        { numRuns: 300, seed: 4 },
      )
    }
  })

  it('[property] no kink: slopes on both sides of every cell boundary are the same', () => {
    const table = tableOf(computed('R-407C'))
    const { xiStart, rowsPerXi, lnCriticalPressure, rows } = table
    const slope = (p: number, h: number, dp: number, dh: number) => {
      expect(lookUp(table, p + dp, h + dh, out)).toBe(true)
      const ahead = out.temperature_K
      lookUp(table, p, h, out)
      return (ahead - out.temperature_K) / (dp + dh)
    }
    for (let row = 5; row < rows - 5; row += 5) {
      const p = Math.exp(lnCriticalPressure - (xiStart + row / rowsPerXi) ** 2)
      const h = enthalpyAtTemperature(table, p, dewTemperature(table, p) + 20)
      const left = slope(p, h, -p * 1e-5, 0)
      const right = slope(p, h, p * 1e-5, 0)
      expect(Math.abs(right / left - 1)).toBeLessThan(1e-3)
    }
    const p = 1e6
    for (let h = enthalpyAtTemperature(table, p, dewTemperature(table, p) + 1), k = 0; k < 200; k++) {
      const here = h + 400 * k
      const left = slope(p, here, 0, -2)
      const right = slope(p, here, 0, 2)
      expect(Math.abs(right / left - 1)).toBeLessThan(1e-3)
    }
  })

  it('[limit] outside there is no answer: too high, too cold, too hot, between bubble and dew, not a number', () => {
    const refrigerant = computed('R-32')
    const table = tableOf(refrigerant)
    const at = saturationAtTemperature(refrigerant, kelvin(280))
    if (!at.ok) throw new Error('no saturation')
    const { pressure_Pa, enthalpy_J_kg } = at.value.dew
    for (const [p, h] of [
      [pressure_Pa, enthalpy_J_kg + 3e5],
      [pressure_Pa, enthalpy_J_kg - 9e5],
      [table.maxPressure_Pa * 1.001, enthalpy_J_kg],
      [table.minPressure_Pa * 0.999, enthalpy_J_kg],
      [pressure_Pa, Number.NaN],
      [Number.NaN, enthalpy_J_kg],
      [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
    ] as const) {
      expect(lookUp(table, p, h, out)).toBe(false)
      expect(entropyAt(table, p, h)).toBeNaN()
    }
    expect(enthalpyAtTemperature(table, pressure_Pa, 500)).toBeNaN()
    expect(dewPressure(table, 100)).toBeNaN()
    expect(dewTemperature(table, -1)).toBeNaN()
    const blend = tableOf(computed('R-407C'))
    expect(
      enthalpyAtTemperature(blend, 1e6, (bubbleTemperature(blend, 1e6) + dewTemperature(blend, 1e6)) / 2),
    ).toBeNaN()
  })

  it('[property] bytes there and back are the same table, and a changed bit is found', () => {
    for (const name of ['R-744', 'R-448A']) {
      const table = tableOf(computed(name))
      const bytes = tableToBytes(table)
      expect(tableFromBytes(bytes)).toEqual({ ok: true, value: table })
      for (const at of [0, 5, 40, bytes.length >> 1, bytes.length - 1]) {
        const damaged = bytes.slice()
        damaged[at]! ^= 4
        expect(tableFromBytes(damaged)).toMatchObject({ ok: false, error: { kind: 'unreadable', field: 'table' } })
      }
      expect(tableFromBytes(bytes.subarray(0, 100))).toMatchObject({ ok: false })
      expect(tableFromBytes(new Uint8Array(3))).toMatchObject({ ok: false })
    }
  })

  it('[published] CRC-32 of the digits 1 to 9 is CBF43926', () => {
    expect(crc32(Uint8Array.from('123456789', (c) => c.charCodeAt(0)))).toBe(0xcbf43926)
  })
})
