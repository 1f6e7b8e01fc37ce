import { kelvin, pascal } from '../../packages/quantity/src/index.ts'
import {
  bubbleTemperature,
  dewTemperature,
  entropyAt,
  lookUp,
  type Refrigerant,
  saturationAtPressure,
  stateAt,
  stateAtQuality,
  tableState,
} from '../../packages/refrigerant/src/index.ts'
import { built } from './table-speed.ts'
import { spread } from './time.ts'

/** Largest and root-mean-square difference of a table from the exact engine, over its whole range. */
export type TableErrors = Readonly<Record<Quantity, { readonly max: number; readonly rms: number }>>

export type Quantity =
  | 'bubble_K'
  | 'dew_K'
  | 'liquidTemperature_K'
  | 'liquidDensity'
  | 'liquidEntropy_J_kgK'
  | 'vapourTemperature_K'
  | 'vapourDensity'
  | 'vapourEntropy_J_kgK'
  | 'wetTemperature_K'
  | 'wetDensity'
  | 'wetEntropy_J_kgK'
  | 'quality'

const PLACES = 240
const out = tableState()

export function tableErrors(refrigerant: Refrigerant): TableErrors {
  const table = built(refrigerant)
  const sums = new Map<Quantity, { max: number; squares: number; count: number }>()
  const note = (quantity: Quantity, difference: number) => {
    const size = Math.abs(difference)
    const sum = sums.get(quantity) ?? { max: 0, squares: 0, count: 0 }
    sums.set(quantity, { max: Math.max(sum.max, size), squares: sum.squares + size * size, count: sum.count + 1 })
  }
  const across = spread(PLACES)
  for (const [k, u] of across.entries()) {
    // A third of the places lies in the last tenth below the highest pressure, where everything bends most.
    const p = pascal(
      k % 3 === 0
        ? table.maxPressure_Pa * (1 - 0.1 * u * u)
        : table.minPressure_Pa * (table.maxPressure_Pa / table.minPressure_Pa) ** u,
    )
    const lines = saturationAtPressure(refrigerant, p)
    if (!lines.ok) continue
    const { bubble, dew } = lines.value
    note('bubble_K', bubbleTemperature(table, p) - bubble.temperature_K)
    note('dew_K', dewTemperature(table, p) - dew.temperature_K)
    const v = across[(k * 11) % PLACES]! ** (k % 2 === 0 ? 4 : 1)
    const cold = Math.max(bubble.temperature_K - 60 * v, refrigerant.range.minTemperature_K)
    const hot = Math.min(dew.temperature_K + 100 * v, refrigerant.range.maxTemperature_K)
    for (const [phase, T] of [
      ['liquid', cold],
      ['vapour', hot],
    ] as const) {
      const exact = stateAt(refrigerant, p, kelvin(T))
      if (!exact.ok || exact.value.phase !== phase) continue
      const { enthalpy_J_kg, density_kg_m3, entropy_J_kgK } = exact.value
      if (!lookUp(table, p, enthalpy_J_kg, out)) throw new Error(`${refrigerant.name}: no look-up at ${p} Pa, ${T} K`)
      note(`${phase}Temperature_K`, out.temperature_K - T)
      note(`${phase}Density`, out.density_kg_m3 / density_kg_m3 - 1)
      note(`${phase}Entropy_J_kgK`, entropyAt(table, p, enthalpy_J_kg) - entropy_J_kgK)
    }
    if (k % 4 !== 0) continue
    const q = across[(k * 7) % PLACES]!
    const wet = stateAtQuality(refrigerant, p, q)
    if (!wet.ok || !lookUp(table, p, wet.value.enthalpy_J_kg, out)) continue
    note('wetTemperature_K', out.temperature_K - wet.value.temperature_K)
    note('wetDensity', out.density_kg_m3 / wet.value.density_kg_m3 - 1)
    note('wetEntropy_J_kgK', entropyAt(table, p, wet.value.enthalpy_J_kg) - wet.value.entropy_J_kgK)
    note('quality', out.quality - q)
  }
  return Object.fromEntries(
    [...sums].map(([quantity, { max, squares, count }]) => [quantity, { max, rms: Math.sqrt(squares / count) }]),
  ) as TableErrors
}
