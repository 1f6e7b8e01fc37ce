import { kelvin, ok, type Problem, pascal, type Result } from '@chargewright/quantity'
import { type Refrigerant, stateAt } from '@chargewright/refrigerant'
import { Matrix } from 'ml-matrix'
import { type BicubicSurface, bicubicSurface, evaluate } from './bicubic-surface.ts'
import { cubicCurves, interpolate, placeIn } from './cubic-curves.ts'
import type { Saturated } from './properties.ts'

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
  /** Temperature, logarithm of density and entropy, by enthalpy. */
  readonly states: BicubicSurface
  /** Enthalpy, by entropy. */
  readonly isentropes: BicubicSurface
}

interface Span {
  readonly atLow: number
  readonly rise: number
}

const ROWS = 25
const COLUMNS = 11
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
  const share = Float64Array.from({ length: ROWS }, (_, i) => i / (ROWS - 1))
  const sampled: Isobar[] = []
  for (const x of share) {
    const samples = isobar(refrigerant, saturated(Math.exp(low + x * (high - low))))
    if (!samples.ok) return samples
    sampled.push(samples.value)
  }
  const enthalpySpan = spanWithin(
    share,
    sampled.map(({ enthalpy }) => enthalpy.at(-1)!),
  )
  const entropySpan = spanWithin(
    share,
    sampled.map(({ entropy }) => entropy.at(-1)!),
  )
  const over = (coordinate: 'enthalpy' | 'entropy', quantity: keyof Isobar, { atLow, rise }: Span) => {
    const matrix = Matrix.zeros(ROWS, COLUMNS)
    for (const [i, line] of sampled.entries()) {
      for (let j = 0; j < COLUMNS; j++) {
        const along = Math.max(j / (COLUMNS - 1), NEAREST_SHARE)
        const wanted = along * (atLow + rise * share[i]!)
        matrix.set(i, j, inverted(line, coordinate, quantity, wanted) / along)
      }
    }
    return matrix
  }
  return ok({
    low,
    high,
    enthalpySpan,
    entropySpan,
    states: bicubicSurface([
      over('enthalpy', 'superheat', enthalpySpan),
      over('enthalpy', 'lnDensity', enthalpySpan),
      over('enthalpy', 'entropy', enthalpySpan),
    ]),
    isentropes: bicubicSurface([over('entropy', 'enthalpy', entropySpan)]),
  })
}

/** The quotient by the coordinate is taken here instead of at the dew point, where it would be nought by nought. */
const NEAREST_SHARE = 1e-4

const state = new Float64Array(3)
const work = new Float64Array(1)

/** Vapour by enthalpy; below the dew point the homogeneous mixture, above the table straight on. */
export function stateIn(table: VapourTable, at: Saturated, enthalpy: number): VapourState {
  const above = enthalpy - at.vapourEnthalpy_J_kg
  if (above <= 0) return mixture(at, above)
  const share = (Math.log(at.pressure_Pa) - table.low) / (table.high - table.low)
  const t = above / lengthOf(table.enthalpySpan, share)
  evaluate(table.states, share, t, state)
  return {
    temperature_K: at.dew_K + t * state[0]!,
    density_kg_m3: at.vapourDensity_kg_m3 * Math.exp(t * state[1]!),
    entropy_J_kgK: at.vapourEntropy_J_kgK + t * state[2]!,
  }
}

export function isentropicIn(table: VapourTable, at: Saturated, entropy: number): number {
  const above = entropy - at.vapourEntropy_J_kgK
  if (above <= 0) return at.vapourEnthalpy_J_kg + at.dew_K * above
  const share = (Math.log(at.pressure_Pa) - table.low) / (table.high - table.low)
  const t = above / lengthOf(table.entropySpan, share)
  evaluate(table.isentropes, share, t, work)
  return at.vapourEnthalpy_J_kg + t * work[0]!
}

/** How far above the dew point the table reaches. */
const lengthOf = ({ atLow, rise }: Span, share: number): number => atLow + rise * Math.min(Math.max(share, 0), 1)

/** The widest straight-edged strip that stays within what was sampled. */
function spanWithin(share: Float64Array, ends: readonly number[]): Span {
  const atLow = ends[0]! * 0.98
  return { atLow, rise: Math.min(...ends.slice(1).map((end, i) => (end - atLow) / share[i + 1]!)) }
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
  const table = cubicCurves(0, SAMPLES - 1, [line[over], line[of]])
  let [low, high] = [0, SAMPLES - 1]
  for (let k = 0; k < 50; k++) {
    const middle = (low + high) / 2
    if (interpolate(table, 0, placeIn(table, middle)) < wanted) low = middle
    else high = middle
  }
  return interpolate(table, 1, placeIn(table, (low + high) / 2))
}
