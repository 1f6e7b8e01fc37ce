import { type Engine, stateOf } from '../engine.ts'
import { solveLine } from '../equilibrium/saturation-line.ts'
import { densityBetween } from '../mixture/density.ts'
import { caloricState } from '../mixture/fixed-composition.ts'
import { type Point, solveByEnthalpy } from '../mixture/state-by-enthalpy.ts'
import type { Row, SaturatedPhase } from './build-table.ts'
import { shareAt } from './grid.ts'
import type { Surface } from './property-table.ts'
import { fitSurface } from './surface.ts'

/** A little more than the table promises, so that its ends are not at the edge of the splines. */
const SUPERHEAT_K = 101
const SUBCOOLING_K = 62
/** Below the lowest temperature the range of subcooling bends to a floor, smoothly over this width. */
const FLOOR_WIDTH_K = 4
const FLOOR_MARGIN_K = 5

const LIQUID = { columns: 16, stretch: 1.8 }
const VAPOUR = { columns: 18, stretch: 1.3 }

export interface SinglePhase {
  readonly surface: Surface
  /** |h − h_sat| at the far end of each row. */
  readonly ranges: Float64Array
}

export function liquidSurface(engine: Engine, rows: readonly Row[]): SinglePhase | undefined {
  const floor = engine.limits.minTemperature_K - FLOOR_MARGIN_K
  const coldest = (T: number) =>
    floor + FLOOR_WIDTH_K * Math.log1p(Math.exp((T - SUBCOOLING_K - floor) / FLOOR_WIDTH_K))
  return singlePhase(engine, rows, LIQUID, {
    start: (row) => row.bubble,
    end: (row) => coldest(row.bubble.temperature),
    volume: (_, density) => density,
  })
}

export function vapourSurface(engine: Engine, rows: readonly Row[]): SinglePhase | undefined {
  return singlePhase(engine, rows, VAPOUR, {
    start: (row) => row.dew,
    end: (row) => row.dew.temperature + SUPERHEAT_K,
    volume: (pressure, density) => pressure / density,
  })
}

interface Region {
  readonly start: (row: Row) => SaturatedPhase
  /** Temperature at the far end. */
  readonly end: (row: Row) => number
  /** The field `volume` from the mass density. */
  readonly volume: (pressure: number, density: number) => number
}

/** Walks every row from its saturation line outwards at equal steps of y. */
function singlePhase(
  engine: Engine,
  rows: readonly Row[],
  { columns, stretch }: { readonly columns: number; readonly stretch: number },
  region: Region,
): SinglePhase | undefined {
  const { fluid, reference } = engine
  const M = fluid.molarMass_kg_mol
  const temperature = new Float64Array(rows.length * columns)
  const volume = temperature.slice()
  const entropy = temperature.slice()
  const ranges = new Float64Array(rows.length)
  const point: Point = { temperature: 0, density: 0, entropy_J_kgK: 0 }
  for (const [i, row] of rows.entries()) {
    const start = region.start(row)
    const end = endOf(engine, row.pressure, start, region.end(row))
    if (!end) return undefined
    const range = end.enthalpy - start.enthalpy
    ranges[i] = Math.abs(range)
    point.temperature = start.temperature
    point.density = start.density
    for (let j = 0; j < columns; j++) {
      const y = j / (columns - 1)
      const enthalpy = start.enthalpy + range * shareAt(y, stretch)
      if (!solveByEnthalpy(fluid, row.pressure, enthalpy + reference.enthalpy_J_kg, point)) return undefined
      const at = i * columns + j
      temperature[at] = point.temperature
      volume[at] = region.volume(row.pressure, point.density * M)
      entropy[at] = point.entropy_J_kgK - reference.entropy_J_kgK
    }
  }
  const spline = (samples: Float64Array) => fitSurface(samples, rows.length, columns)
  const surface: Surface = {
    every: 1,
    columns,
    stretch,
    temperature: spline(temperature),
    volume: spline(volume),
    entropy: spline(entropy),
    quality: new Float64Array(0),
  }
  return { surface, ranges }
}

const state = caloricState()

/** The state at the far end of a row, on the same branch as its start. */
function endOf(
  engine: Engine,
  pressure: number,
  start: SaturatedPhase,
  temperature: number,
): SaturatedPhase | undefined {
  const colder = temperature < start.temperature
  const thinnest = colder ? saturatedLiquid(engine, temperature) * (1 - 1e-6) : 0
  const densest = colder ? Number.POSITIVE_INFINITY : start.density * (1 + 1e-9)
  const guess = colder ? thinnest : (start.density * start.temperature) / temperature
  const density = densityBetween(engine.fluid, temperature, pressure, guess, thinnest, densest)
  if (!(density > 0)) return undefined
  stateOf(engine, temperature, density, state)
  return { temperature, density, enthalpy: state.enthalpy_J_kg, entropy: state.entropy_J_kgK }
}

/** Colder than the saturation line goes, its coldest point: still thinner than the liquid that is sought. */
function saturatedLiquid({ bubble, limits, moleFractions }: Engine, temperature: number): number {
  const lnT = Math.log(Math.max(temperature, limits.saturation.minTemperature_K))
  return solveLine(bubble, 'temperature', lnT) ? Math.exp(bubble.work.u[moleFractions.length]!) : Number.NaN
}
