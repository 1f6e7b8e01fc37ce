import { kelvin, ok, type Problem, pascal, type Result } from '@chargewright/quantity'
import { type Refrigerant, stateAt } from '@chargewright/refrigerant'
import { type ChebyshevSurface, chebyshevNodes, fillBasis, fitSurface, surfaceAt } from './chebyshev.ts'
import type { Saturated } from './properties.ts'
import { interpolate, placeIn, splineTable } from './spline.ts'

export interface VapourState {
  readonly temperature_K: number
  readonly density_kg_m3: number
  readonly entropy_J_kgK: number
}

/**
 * Superheated vapour over (ln p, distance above the dew point). What is stored is each property's distance from its
 * value at the dew point, divided by the coordinate, so that vapour and two-phase meet exactly.
 */
export interface VapourTable {
  readonly low: number
  readonly high: number
  /** Enthalpy and entropy above the dew point at which the table ends, over the share of the way from low to high. */
  readonly enthalpySpan: Span
  readonly entropySpan: Span
  readonly temperature: ChebyshevSurface
  readonly lnDensity: ChebyshevSurface
  readonly entropy: ChebyshevSurface
  readonly isentropic: ChebyshevSurface
  readonly rowBasis: Float64Array
  readonly columnBasis: Float64Array
}

interface Span {
  readonly atLow: number
  readonly rise: number
}

const ROWS = 13
const COLUMNS = 6
const SAMPLES = 13
/** A discharge gas hotter than this above its dew point has long tripped its compressor. */
const SPAN_K = 120
/** Just off the saturation line, where the equations of state know the phase without doubt. */
const NEAREST_K = 1e-4

export function vapourTable(
  refrigerant: Refrigerant,
  saturated: (pressure: number) => Saturated,
  low: number,
  high: number,
): Result<VapourTable, Problem> {
  const rows = Array.from(chebyshevNodes(ROWS), (x) => saturated(Math.exp(low + 0.5 * (x + 1) * (high - low))))
  const sampled: Isobar[] = []
  for (const at of rows) {
    const samples = isobar(refrigerant, at)
    if (!samples.ok) return samples
    sampled.push(samples.value)
  }
  const share = chebyshevNodes(ROWS).map((x) => 0.5 * (x + 1))
  const along = chebyshevNodes(COLUMNS).map((y) => 0.5 * (y + 1))
  const enthalpySpan = spanWithin(
    share,
    sampled.map(({ enthalpy }) => enthalpy.at(-1)!),
  )
  const entropySpan = spanWithin(
    share,
    sampled.map(({ entropy }) => entropy.at(-1)!),
  )
  const surface = (over: 'enthalpy' | 'entropy', of: keyof Isobar, { atLow, rise }: Span) =>
    fitSurface(ROWS, COLUMNS, (i, j) => {
      const wanted = along[j]! * (atLow + rise * share[i]!)
      return inverted(sampled[i]!, over, of, wanted) / along[j]!
    })
  return ok({
    low,
    high,
    enthalpySpan,
    entropySpan,
    temperature: surface('enthalpy', 'superheat', enthalpySpan),
    lnDensity: surface('enthalpy', 'lnDensity', enthalpySpan),
    entropy: surface('enthalpy', 'entropy', enthalpySpan),
    isentropic: surface('entropy', 'enthalpy', entropySpan),
    rowBasis: new Float64Array(ROWS),
    columnBasis: new Float64Array(COLUMNS),
  })
}

/** Vapour by enthalpy; below the dew point the homogeneous mixture, above the table straight on. */
export function stateIn(table: VapourTable, at: Saturated, enthalpy: number): VapourState {
  const above = enthalpy - at.vapourEnthalpy_J_kg
  if (above <= 0) return mixture(at, above)
  const t = locate(table, table.enthalpySpan, at.pressure_Pa, above)
  const of = (surface: ChebyshevSurface) => t * surfaceAt(surface, table.rowBasis, table.columnBasis)
  return {
    temperature_K: at.dew_K + of(table.temperature),
    density_kg_m3: at.vapourDensity_kg_m3 * Math.exp(of(table.lnDensity)),
    entropy_J_kgK: at.vapourEntropy_J_kgK + of(table.entropy),
  }
}

export function isentropicIn(table: VapourTable, at: Saturated, entropy: number): number {
  const above = entropy - at.vapourEntropy_J_kgK
  if (above <= 0) return at.vapourEnthalpy_J_kg + at.dew_K * above
  const t = locate(table, table.entropySpan, at.pressure_Pa, above)
  return at.vapourEnthalpy_J_kg + t * surfaceAt(table.isentropic, table.rowBasis, table.columnBasis)
}

/** The coordinate across the table, 0 at the dew point; leaves both bases filled for it. */
function locate(table: VapourTable, { atLow, rise }: Span, pressure: number, above: number): number {
  const share = (Math.log(pressure) - table.low) / (table.high - table.low)
  const t = above / (atLow + rise * Math.min(Math.max(share, 0), 1))
  fillBasis(table.rowBasis, 2 * share - 1)
  fillBasis(table.columnBasis, 2 * t - 1)
  return t
}

/** The widest straight-edged strip that stays within what was sampled; `share` falls from near 1 to near 0. */
function spanWithin(share: Float64Array, ends: readonly number[]): Span {
  const atLow = ends.at(-1)! * 0.98
  return { atLow, rise: Math.min(...ends.map((end, i) => (end - atLow) / share[i]!)) }
}

function mixture(at: Saturated, below: number): VapourState {
  const dryness = Math.max(1 + below / (at.vapourEnthalpy_J_kg - at.liquidEnthalpy_J_kg), 0)
  const volume = dryness / at.vapourDensity_kg_m3 + (1 - dryness) / at.liquidDensity_kg_m3
  return {
    temperature_K: at.bubble_K + dryness * (at.dew_K - at.bubble_K),
    density_kg_m3: 1 / volume,
    entropy_J_kgK: at.vapourEntropy_J_kgK + below / at.dew_K,
  }
}

/** Distances from the dew point along one isobar. */
interface Isobar {
  readonly superheat: Float64Array
  readonly enthalpy: Float64Array
  readonly lnDensity: Float64Array
  readonly entropy: Float64Array
}

function isobar(refrigerant: Refrigerant, at: Saturated): Result<Isobar, Problem> {
  const hottest = Math.min(SPAN_K, refrigerant.range.maxTemperature_K - at.dew_K - NEAREST_K)
  const column = () => new Float64Array(SAMPLES)
  const line = { superheat: column(), enthalpy: column(), lnDensity: column(), entropy: column() }
  for (let i = 1; i < SAMPLES; i++) {
    // Squared spacing: the isobars bend most next to the dew point.
    const superheat = NEAREST_K + hottest * (i / (SAMPLES - 1)) ** 2
    const state = stateAt(refrigerant, pascal(at.pressure_Pa), kelvin(at.dew_K + superheat))
    if (!state.ok) return state
    line.superheat[i] = superheat
    line.enthalpy[i] = state.value.enthalpy_J_kg - at.vapourEnthalpy_J_kg
    line.lnDensity[i] = Math.log(state.value.density_kg_m3 / at.vapourDensity_kg_m3)
    line.entropy[i] = state.value.entropy_J_kgK - at.vapourEntropy_J_kgK
  }
  return ok(line)
}

/** The value of one quantity where another has a given value, both splines over the sample number. */
function inverted(line: Isobar, over: keyof Isobar, of: keyof Isobar, wanted: number): number {
  const table = splineTable(0, SAMPLES - 1, [line[over], line[of]])
  let [low, high] = [0, SAMPLES - 1]
  for (let k = 0; k < 50; k++) {
    const middle = (low + high) / 2
    if (interpolate(table, 0, placeIn(table, middle)) < wanted) low = middle
    else high = middle
  }
  return interpolate(table, 1, placeIn(table, (low + high) / 2))
}
