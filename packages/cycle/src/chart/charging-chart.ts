import { moistAir } from '@chargewright/moist-air'
import {
  fail,
  kelvin,
  ok,
  outOfRange,
  type Problem,
  pascal,
  type Result,
  STANDARD_ATMOSPHERE,
} from '@chargewright/quantity'
import type { OutcomeKind } from '../outcome.ts'
import { type Solution, solve } from '../solve.ts'
import { type Conditions, conditions, type Health, type System, type Unknowns } from '../system.ts'

/** What the indoor axis of a chart means. */
export type ChartFamily =
  /** Return-air wet bulb; the dry bulb is 80 °F, or that of 50 % relative humidity where this is warmer. */
  | { readonly kind: 'wet-bulb' }
  /** Return-air dry bulb at a stated relative humidity, 0 to 1. */
  | { readonly kind: 'dry-bulb'; readonly relativeHumidity: number }

export type ChartMeasure = 'superheat_K' | 'subcooling_K'

/** A target with the band in which it is met, or why there is none. */
export type ChartCell =
  | { readonly kind: 'target'; readonly value_K: number; readonly low_K: number; readonly high_K: number }
  | { readonly kind: 'none'; readonly because: 'below-least-target' | NoState | OutcomeKind }

type NoState = Exclude<Solution['kind'], 'steady'>

export interface ChargingChart {
  readonly source: 'estimated by model'
  readonly measure: ChartMeasure
  readonly family: ChartFamily
  /** Rows, K. */
  readonly outdoor_K: readonly number[]
  /** Columns, K. */
  readonly indoor_K: readonly number[]
  readonly cells: readonly (readonly ChartCell[])[]
}

/** ±5 °F on superheat, ±3 °F on subcooling, no test below a target of 5 °F: California residential appendix RA3.2. */
const BAND_K = { superheat_K: 5 / 1.8, subcooling_K: 3 / 1.8 } as const
const LEAST_TARGET_K = { superheat_K: 5 / 1.8, subcooling_K: 0 } as const
/** Outcomes at which a state is no target, however it reads. */
const NO_TARGET: readonly OutcomeKind[] = ['high-pressure-trip', 'low-pressure-trip', 'flooded', 'frost']

/**
 * The charging chart of a system at its nameplate charge, or of any health that is to be the right one.
 *
 * @param outdoor_K,indoor_K the axes, rising; 20 °F to 130 °F outdoors, 30 °F to 110 °F indoors
 * @param sitePressure Pa absolute, 50 kPa to 120 kPa: thin air carries less heat over the coils
 */
export function chargingChart(
  system: System,
  health: Health,
  measure: ChartMeasure,
  family: ChartFamily,
  outdoor_K: readonly number[],
  indoor_K: readonly number[],
  sitePressure: number = STANDARD_ATMOSPHERE.si,
): Result<ChargingChart, Problem> {
  for (const T of outdoor_K) {
    const problem = outOfRange('outdoor temperature', T, 266, 328, 'K')
    if (problem) return fail(problem)
  }
  const rows: ChartCell[][] = outdoor_K.map(() => [])
  for (const T of indoor_K) {
    const problem = outOfRange('indoor temperature', T, 272, 317, 'K')
    if (problem) return fail(problem)
    const indoor = indoorAir(family, T, sitePressure)
    if (!indoor.ok) return indoor
    let start: Unknowns | undefined
    for (const [row, outdoor] of outdoor_K.entries()) {
      const at = conditions(outdoor, indoor.value.dryBulb, indoor.value.wetBulb, sitePressure)
      if (!at.ok) return at
      const solution = solve(system, at.value, health, start)
      start = solution.kind === 'steady' ? solution.unknowns : undefined
      rows[row]!.push(cellOf(solution, measure))
    }
  }
  return ok({ source: 'estimated by model', measure, family, outdoor_K, indoor_K, cells: rows })
}

/** The cell of one weather: what a chart of this system would say there, without reading between its lines. */
export const targetAt = (system: System, health: Health, at: Conditions, measure: ChartMeasure): ChartCell =>
  cellOf(solve(system, at, health), measure)

function cellOf(solution: Solution, measure: ChartMeasure): ChartCell {
  if (solution.kind !== 'steady') return { kind: 'none', because: solution.kind }
  const { readings, outcomes } = solution
  const stopped = outcomes.find(({ kind }) => NO_TARGET.includes(kind))
  if (stopped) return { kind: 'none', because: stopped.kind }
  const value_K = readings[measure]
  if (value_K < LEAST_TARGET_K[measure]) return { kind: 'none', because: 'below-least-target' }
  return { kind: 'target', value_K, low_K: value_K - BAND_K[measure], high_K: value_K + BAND_K[measure] }
}

const CONVENTION_DRY_BULB_K = 299.82
const CONVENTION_HUMIDITY = 0.5

/** The air that a column stands for. The convention of wet-bulb charts is that of capacity tables: 80 °F dry bulb. */
function indoorAir(
  family: ChartFamily,
  T: number,
  sitePressure: number,
): Result<{ dryBulb: number; wetBulb: number }, Problem> {
  const site = pascal(sitePressure)
  if (family.kind === 'dry-bulb') {
    const state = moistAir(kelvin(T), { relativeHumidity: family.relativeHumidity }, site)
    return state.ok ? ok({ dryBulb: T, wetBulb: state.value.wetBulb_K }) : state
  }
  let [low, high] = [T, T + 30]
  for (let i = 0; i < 30; i++) {
    const dryBulb = (low + high) / 2
    const state = moistAir(kelvin(dryBulb), { wetBulb: kelvin(T) }, site)
    if (state.ok && state.value.relativeHumidity > CONVENTION_HUMIDITY) low = dryBulb
    else high = dryBulb
  }
  return ok({ dryBulb: Math.max(CONVENTION_DRY_BULB_K, high), wetBulb: T })
}
