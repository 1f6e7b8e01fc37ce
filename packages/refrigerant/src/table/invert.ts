import { exponential } from '../helmholtz/exponential.ts'
import { cell, holds, rowPlace, shareAt } from './grid.ts'
import { CURVE, type PropertyTable, type Surface } from './property-table.ts'
import { saturation } from './saturation-curve.ts'
import { weights } from './spline.ts'

/** Spline coefficients of the one line that a search runs along. */
const line = new Float64Array(128)
const w = new Float64Array(4)

/**
 * Enthalpy at a pressure and a temperature in single phase, J/kg: liquid below the bubble point, vapour above the dew
 * point. NaN outside the table and between the two, where a temperature does not fix the state of a pure fluid.
 * Found on the same surface as the look-up by enthalpy, so that going there and back returns the start.
 */
export function enthalpyAtTemperature(table: PropertyTable, pressure: number, temperature: number): number {
  if (temperature <= saturation(table, CURVE.bubbleTemperature, pressure)) {
    return enthalpyWhere(table, pressure, 'liquid', 'temperature', temperature)
  }
  if (temperature >= saturation(table, CURVE.dewTemperature, pressure)) {
    return enthalpyWhere(table, pressure, 'vapour', 'temperature', temperature)
  }
  return Number.NaN
}

/** Enthalpy of the vapour at a pressure and an entropy, for an isentropic compression; NaN outside the table. */
export function vapourEnthalpyAtEntropy(table: PropertyTable, pressure: number, entropy: number): number {
  return enthalpyWhere(table, pressure, 'vapour', 'entropy', entropy)
}

/** Bubble pressure at a temperature, Pa; NaN outside the table. */
export function bubblePressure(table: PropertyTable, temperature: number): number {
  return pressureWhere(table, CURVE.bubbleTemperature, temperature)
}

/** Dew pressure at a temperature, Pa; NaN outside the table. */
export function dewPressure(table: PropertyTable, temperature: number): number {
  return pressureWhere(table, CURVE.dewTemperature, temperature)
}

function pressureWhere(table: PropertyTable, which: number, temperature: number): number {
  const stride = table.rows + 2
  line.set(table.curves.subarray(which * stride, (which + 1) * stride))
  const place = placeOf(temperature, table.rows)
  const xi = table.xiStart + place / table.rowsPerXi
  return exponential(table.lnCriticalPressure - xi * xi)
}

/** The enthalpy at which a field of one phase has a value. */
function enthalpyWhere(
  table: PropertyTable,
  pressure: number,
  phase: 'liquid' | 'vapour',
  field: 'temperature' | 'entropy',
  value: number,
): number {
  const surface = table[phase]
  if (!collapse(table, surface, surface[field], pressure)) return Number.NaN
  const { columns, stretch } = surface
  const share = shareAt(placeOf(value, columns) / (columns - 1), stretch)
  return phase === 'liquid'
    ? saturation(table, CURVE.liquidEnthalpy, pressure) - share * saturation(table, CURVE.liquidRange, pressure)
    : saturation(table, CURVE.vapourEnthalpy, pressure) + share * saturation(table, CURVE.vapourRange, pressure)
}

/** The line across the columns at one pressure. */
function collapse(table: PropertyTable, { columns }: Surface, f: Float64Array, pressure: number): boolean {
  if (!holds(table, pressure)) return false
  const down = rowPlace(table, pressure)
  const row = cell(down, table.rows - 1)
  weights(down - row, w)
  const width = columns + 2
  for (let k = 0; k < width; k++) {
    const i = row * width + k
    line[k] = w[0]! * f[i]! + w[1]! * f[i + width]! + w[2]! * f[i + 2 * width]! + w[3]! * f[i + 3 * width]!
  }
  return true
}

const node = (k: number): number => (line[k]! + 4 * line[k + 1]! + line[k + 2]!) / 6

/** Relative to the whole line: values this far past an end are its end. */
const SLACK = 1e-9
const NEWTON_STEPS = 6

/** Where the monotone spline in `line` has a value, 0 to nodes − 1; NaN beyond its ends. */
function placeOf(value: number, nodes: number): number {
  const start = node(0)
  const end = node(nodes - 1)
  const share = (value - start) / (end - start)
  if (!(share >= -SLACK && share <= 1 + SLACK)) return Number.NaN
  const sign = end > start ? 1 : -1
  let low = 0
  let high = nodes - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (sign * (node(middle) - value) <= 0) low = middle
    else high = middle
  }
  const a = line[low]!
  const b = line[low + 1]!
  const c = line[low + 2]!
  const d = line[low + 3]!
  // The cubic of this cell in powers of t.
  const p0 = (a + 4 * b + c) / 6
  const p1 = (c - a) / 2
  const p2 = (a - 2 * b + c) / 2
  const p3 = (d - a + 3 * (b - c)) / 6
  const p = p0 - value
  let t = -p / (p1 + p2 + p3)
  for (let k = 0; k < NEWTON_STEPS; k++) {
    const step = (p + t * (p1 + t * (p2 + t * p3))) / (p1 + t * (2 * p2 + t * 3 * p3))
    t -= step
    if (Math.abs(step) < 1e-12) break
  }
  return Math.min(Math.max(low + t, 0), nodes - 1)
}
