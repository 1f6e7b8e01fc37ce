import { pascal } from '../../packages/quantity/src/index.ts'
import {
  buildTable,
  dewTemperature,
  enthalpyAtTemperature,
  lookUp,
  type PropertyTable,
  type Refrigerant,
  saturationAtPressure,
  stateAtQuality,
  tableState,
  tableToBytes,
  vapourEnthalpyAtEntropy,
} from '../../packages/refrigerant/src/index.ts'
import { solveByEnthalpy } from '../../packages/refrigerant/src/mixture/state-by-enthalpy.ts'
import { piecewiseLinear } from './general-library.ts'
import { milliseconds, nanosecondsPerCall, sink, spread } from './time.ts'

export interface TableSpeed {
  readonly name: string
  readonly components: number
  readonly bytes: number
  readonly warmBuild_ms: number
  readonly saturation_ns: number
  readonly vapour_ns: number
  readonly anyPhase_ns: number
  readonly enthalpyByTemperature_ns: number
  readonly enthalpyByEntropy_ns: number
  /** The same questions put to the exact engine, and the saturation one to a general library's linear interpolation. */
  readonly exactSaturation_ns: number
  readonly exactVapour_ns: number
  readonly generalSaturation_ns: number
}

const CALLS = 2048

export function tableSpeed(refrigerant: Refrigerant): TableSpeed {
  const { name, components, engine } = refrigerant
  const table = built(refrigerant)
  const places = spread(CALLS)
  const P = new Float64Array(CALLS)
  const vapourH = new Float64Array(CALLS)
  const anyH = new Float64Array(CALLS)
  const T = new Float64Array(CALLS)
  const S = new Float64Array(CALLS)
  for (const [k, u] of places.entries()) {
    const p = table.minPressure_Pa * (table.maxPressure_Pa / table.minPressure_Pa) ** (0.3 + 0.65 * u)
    const lines = saturationAtPressure(refrigerant, pascal(p))
    if (!lines.ok) throw new Error(name)
    const { bubble, dew } = lines.value
    const v = places[(k * 7) % CALLS]!
    P[k] = p
    vapourH[k] = dew.enthalpy_J_kg + 4e4 * v
    anyH[k] = bubble.enthalpy_J_kg - 3e4 + (dew.enthalpy_J_kg - bubble.enthalpy_J_kg + 6e4) * v
    T[k] = dew.temperature_K + 50 * v
    S[k] = dew.entropy_J_kgK + 60 * v
  }
  const out = tableState()
  const general = piecewiseLinear(
    Array.from(
      { length: 1000 },
      (_, k) => table.minPressure_Pa * (table.maxPressure_Pa / table.minPressure_Pa) ** (k / 999),
    ),
    (p) => dewTemperature(table, p),
  )
  const each = (ask: (k: number) => number) =>
    nanosecondsPerCall(CALLS, () => {
      let sum = 0
      for (let k = 0; k < CALLS; k++) sum += ask(k)
      sink[0] = sum
    })
  const few = (ask: (k: number) => number) =>
    nanosecondsPerCall(128, () => {
      let sum = 0
      for (let k = 0; k < 128; k++) sum += ask(k * 16)
      sink[0] = sum
    })
  return {
    name,
    components: components.length,
    bytes: tableToBytes(table).length,
    warmBuild_ms: milliseconds(() => built(refrigerant)),
    saturation_ns: each((k) => dewTemperature(table, P[k]!)),
    vapour_ns: each((k) =>
      lookUp(table, P[k]!, vapourH[k]!, out) ? out.temperature_K + out.density_kg_m3 : Number.NaN,
    ),
    anyPhase_ns: each((k) =>
      lookUp(table, P[k]!, anyH[k]!, out) ? out.temperature_K + out.density_kg_m3 : Number.NaN,
    ),
    enthalpyByTemperature_ns: each((k) => enthalpyAtTemperature(table, P[k]!, T[k]!)),
    enthalpyByEntropy_ns: each((k) => vapourEnthalpyAtEntropy(table, P[k]!, S[k]!)),
    exactSaturation_ns: few((k) => {
      const lines = saturationAtPressure(refrigerant, pascal(P[k]!))
      return lines.ok ? lines.value.dew.temperature_K : Number.NaN
    }),
    exactVapour_ns: few((k) => exactByEnthalpy(refrigerant, P[k]!, vapourH[k]! + engine.reference.enthalpy_J_kg)),
    generalSaturation_ns: each((k) => general(P[k]!)),
  }
}

const point = { temperature: 0, density: 0, entropy_J_kgK: 0 }

/** The exact engine asked for T by (p, h), started at the saturated vapour. */
function exactByEnthalpy(refrigerant: Refrigerant, pressure: number, enthalpy: number): number {
  const { fluid } = refrigerant.engine
  const start = stateAtQuality(refrigerant, pascal(pressure), 1)
  if (!start.ok) return Number.NaN
  point.temperature = start.value.temperature_K
  point.density = start.value.density_kg_m3 / fluid.molarMass_kg_mol
  return solveByEnthalpy(fluid, pressure, enthalpy, point) ? point.temperature : Number.NaN
}

export function built(refrigerant: Refrigerant): PropertyTable {
  const table = buildTable(refrigerant)
  if (!table.ok) throw new Error(`${refrigerant.name}: no table`)
  return table.value
}
