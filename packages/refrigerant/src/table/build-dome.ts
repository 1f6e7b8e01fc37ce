import type { Engine } from '../engine.ts'
import { solveLine } from '../equilibrium/saturation-line.ts'
import { type Split, solveSplit, split } from '../equilibrium/split.ts'
import { endsOf, startSplit } from '../equilibrium/split-start.ts'
import { stateOfSplit } from '../two-phase.ts'
import type { Row } from './build-table.ts'
import { shareAt } from './grid.ts'
import type { Surface } from './property-table.ts'
import { fitSurface } from './surface.ts'

const COLUMNS = 22
/** A trace of a very volatile component leaves within the first bubbles: columns stand closer there. */
const STRETCH = 1.6
/** The departures from straight lines are small, and flashes are dear: every fourth row is enough. */
export const DOME_EVERY = 4
/** Qualities at which a row is flashed; the first and the last stand for the limits at the saturation lines. */
const INNER = 18
const NEARLY = 1e-4
const QUALITIES = [
  NEARLY,
  ...Array.from({ length: INNER }, (_, k) => shareAt((k + 1) / (INNER + 1), STRETCH)),
  1 - NEARLY,
]
const ITERATIONS = 20

const FIELDS = ['temperature', 'volume', 'entropy', 'quality'] as const
type Field = (typeof FIELDS)[number]
type Departures = Readonly<Record<Field, Float64Array>>

/** Flashes every row and brings it to equal steps of z = (h − h_l)/(h_v − h_l). */
export function domeSurface(engine: Engine, everyRow: readonly Row[]): Surface | undefined {
  const rows = everyRow.filter((_, i) => i % DOME_EVERY === 0)
  const flash = split(engine.model, engine.massFractions)
  const z = new Float64Array(QUALITIES.length)
  const departures: Departures = {
    temperature: z.slice(),
    volume: z.slice(),
    entropy: z.slice(),
    quality: z.slice(),
  }
  const samples = {
    temperature: new Float64Array(rows.length * COLUMNS),
    volume: new Float64Array(rows.length * COLUMNS),
    entropy: new Float64Array(rows.length * COLUMNS),
    quality: new Float64Array(rows.length * COLUMNS),
  }
  for (const [i, row] of rows.entries()) {
    if (!flashRow(engine, flash, row, z, departures)) return undefined
    for (const field of FIELDS) {
      for (let j = 0; j < COLUMNS; j++) {
        samples[field][i * COLUMNS + j] = interpolate(z, departures[field], shareAt(j / (COLUMNS - 1), STRETCH))
      }
    }
  }
  const spline = (field: Field) => fitSurface(samples[field], rows.length, COLUMNS)
  return {
    every: DOME_EVERY,
    columns: COLUMNS,
    stretch: STRETCH,
    temperature: spline('temperature'),
    volume: spline('volume'),
    entropy: spline('entropy'),
    quality: spline('quality'),
  }
}

/** Departures of one row from the straight lines, at the qualities of `QUALITIES`, and the z of each. */
function flashRow(engine: Engine, flash: Split, row: Row, z: Float64Array, departures: Departures): boolean {
  const { pressure, bubble, dew } = row
  const lnP = Math.log(pressure)
  if (!solveLine(engine.bubble, 'pressure', lnP) || !solveLine(engine.dew, 'pressure', lnP)) return false
  const ends = endsOf(engine.bubble.work, engine.dew.work, engine.massFractions)
  const M = engine.fluid.molarMass_kg_mol
  const vL = 1 / (bubble.density * M)
  const vV = 1 / (dew.density * M)
  for (const [k, q] of QUALITIES.entries()) {
    startSplit(flash, ends, 'quality', q)
    if (!solveSplit(flash, pressure, 'quality', q, ITERATIONS)) return false
    const state = stateOfSplit(engine, flash)
    const share = (state.enthalpy_J_kg - bubble.enthalpy) / (dew.enthalpy - bubble.enthalpy)
    const line = (a: number, b: number) => a + share * (b - a)
    z[k] = share
    departures.temperature[k] = state.temperature_K - line(bubble.temperature, dew.temperature)
    departures.volume[k] = (1 / state.density_kg_m3 - vL) / (share * (vV - vL))
    departures.entropy[k] = state.entropy_J_kgK - line(bubble.entropy, dew.entropy)
    departures.quality[k] = q - share
  }
  return true
}

/** Lagrange's polynomial through the six nodes nearest to x. */
function interpolate(nodes: Float64Array, values: Float64Array, x: number): number {
  const degree = 5
  let first = 0
  while (first + degree + 1 < nodes.length && nodes[first + (degree + 1) / 2]! < x) first++
  let sum = 0
  for (let i = first; i <= first + degree; i++) {
    let weight = values[i]!
    for (let k = first; k <= first + degree; k++) if (k !== i) weight *= (x - nodes[k]!) / (nodes[i]! - nodes[k]!)
    sum += weight
  }
  return sum
}
