import { CURVE, type PropertyTable, type Surface } from './property-table.ts'

/** What a look-up fills; make one and use it again and again. */
export interface TableState {
  region: 'liquid' | 'two-phase' | 'vapour'
  temperature_K: number
  density_kg_m3: number
  /** Vapour share of the mass; 0 in the liquid and 1 in the vapour. */
  quality: number
}

/** Starts with fractions, so that the fields are kept as plain doubles from the beginning. */
export const tableState = (): TableState => ({ region: 'vapour', temperature_K: 0.1, density_kg_m3: 0.1, quality: 0.1 })

/**
 * Numbers pass between the functions here in these arrays: a number handed to a function that is not inlined is put in
 * a box first, which costs more than the arithmetic.
 */
const rowWeights = new Float64Array(4)
const columnWeights = new Float64Array(4)
const values = new Float64Array(2)
/** Divisions cost as much as ten multiplications. */
const SIXTH = 1 / 6
const TWO_THIRDS = 2 / 3

/**
 * The state at a pressure and an enthalpy. Returns false, leaving `out` alone, outside the table: pressure outside its
 * range, more than 60 K subcooled or 100 K superheated, or not a number.
 */
export function lookUp(table: PropertyTable, pressure: number, enthalpy: number, out: TableState): boolean {
  const row = findRow(table, pressure)
  if (row < 0) return false
  const { curves, vapour } = table
  const stride = table.rows + 2
  const hV = curve(curves, CURVE.vapourEnthalpy * stride + row)
  if (enthalpy > hV) {
    const share = (enthalpy - hV) / curve(curves, CURVE.vapourRange * stride + row)
    if (!(share <= 1)) return false
    blend(vapour.columns + 2, vapour.temperature, vapour.volume, findColumn(vapour, share, row))
    out.region = 'vapour'
    out.temperature_K = values[0]!
    out.density_kg_m3 = pressure / values[1]!
    out.quality = 1
    return true
  }
  const hL = curve(curves, CURVE.liquidEnthalpy * stride + row)
  if (enthalpy < hL) {
    const { liquid } = table
    const share = (hL - enthalpy) / curve(curves, CURVE.liquidRange * stride + row)
    if (!(share <= 1)) return false
    blend(liquid.columns + 2, liquid.temperature, liquid.volume, findColumn(liquid, share, row))
    out.region = 'liquid'
    out.temperature_K = values[0]!
    out.density_kg_m3 = values[1]!
    out.quality = 0
    return true
  }
  if (!(enthalpy >= hL)) return false
  out.quality = (enthalpy - hL) / (hV - hL)
  twoPhase(table, row, pressure, out)
  return true
}

/** Entropy at a pressure and an enthalpy, J/(kg·K); NaN outside the table. */
export function entropyAt(table: PropertyTable, pressure: number, enthalpy: number): number {
  const row = findRow(table, pressure)
  if (row < 0) return Number.NaN
  const stride = table.rows + 2
  const hL = curve(table.curves, CURVE.liquidEnthalpy * stride + row)
  const hV = curve(table.curves, CURVE.vapourEnthalpy * stride + row)
  if (enthalpy >= hL && enthalpy <= hV) {
    const z = (enthalpy - hL) / (hV - hL)
    const sL = curve(table.curves, CURVE.liquidEntropy * stride + row)
    const sV = curve(table.curves, CURVE.vapourEntropy * stride + row)
    const straight = sL + z * (sV - sL)
    if (!table.dome) return straight
    return straight + blendOne(table.dome, table.dome.entropy, findDome(table, table.dome, row, z))
  }
  const surface = enthalpy < hL ? table.liquid : table.vapour
  const range = curve(table.curves, (enthalpy < hL ? CURVE.liquidRange : CURVE.vapourRange) * stride + row)
  const share = (enthalpy < hL ? hL - enthalpy : enthalpy - hV) / range
  if (!(share <= 1)) return Number.NaN
  return blendOne(surface, surface.entropy, findColumn(surface, share, row))
}

/** Temperature of the bubble point at a pressure, K; NaN outside the table. */
export function bubbleTemperature(table: PropertyTable, pressure: number): number {
  return saturation(table, CURVE.bubbleTemperature, pressure)
}

/** Temperature of the dew point at a pressure, K; NaN outside the table. */
export function dewTemperature(table: PropertyTable, pressure: number): number {
  return saturation(table, CURVE.dewTemperature, pressure)
}

/** One of the saturation curves at a pressure; NaN outside the table. */
export function saturation(table: PropertyTable, which: number, pressure: number): number {
  const row = findRow(table, pressure)
  return row < 0 ? Number.NaN : curve(table.curves, which * (table.rows + 2) + row)
}

/** From the straight line between the saturated phases, at z in `out.quality`, to the state of the dome there. */
function twoPhase(table: PropertyTable, row: number, pressure: number, out: TableState): void {
  const { curves, dome } = table
  const stride = table.rows + 2
  const z = out.quality
  const bubble = curve(curves, CURVE.bubbleTemperature * stride + row)
  const dew = curve(curves, CURVE.dewTemperature * stride + row)
  const vL = 1 / curve(curves, CURVE.liquidDensity * stride + row)
  const vV = curve(curves, CURVE.vapourPressureVolume * stride + row) / pressure
  out.region = 'two-phase'
  out.temperature_K = bubble + z * (dew - bubble)
  let factor = z
  if (dome) {
    const at = findDome(table, dome, row, z)
    blend(dome.columns + 2, dome.temperature, dome.volume, at)
    out.temperature_K += values[0]!
    factor *= values[1]!
    out.quality = z + blendOne(dome, dome.quality, at)
  }
  out.density_kg_m3 = 1 / (vL + factor * (vV - vL))
}

/** First of the four rows around a pressure, their weights in `rowWeights`; −1 outside the table. */
function findRow(table: PropertyTable, pressure: number): number {
  if (!(pressure >= table.minPressure_Pa && pressure <= table.maxPressure_Pa)) return -1
  const place = (Math.sqrt(table.lnCriticalPressure - Math.log(pressure)) - table.xiStart) * table.rowsPerXi
  const row = cell(place, table.rows - 1)
  setWeights(rowWeights, place - row)
  return row
}

/** Index of the first coefficient around a share of the enthalpy range, the columns' weights in `columnWeights`. */
function findColumn({ columns, stretch }: Surface, share: number, row: number): number {
  const half = 0.5 * stretch
  const place = (Math.sqrt(half * half + (1 + stretch) * share) - half) * (columns - 1)
  const column = cell(place, columns - 1)
  setWeights(columnWeights, place - column)
  return row * (columns + 2) + column
}

/** The same for the dome, whose rows are fewer: `rowWeights` then belong to those. */
function findDome(table: PropertyTable, dome: Surface, row: number, z: number): number {
  // The weights of the row hold its fraction: Σ k·w_k = 1 + t.
  const place = (row + rowWeights[1]! + 2 * rowWeights[2]! + 3 * rowWeights[3]! - 1) / dome.every
  const domeRow = cell(place, (table.rows - 1) / dome.every)
  setWeights(rowWeights, place - domeRow)
  return findColumn(dome, z, domeRow)
}

function curve(curves: Float64Array, i: number): number {
  const w = rowWeights
  return w[0]! * curves[i]! + w[1]! * curves[i + 1]! + w[2]! * curves[i + 2]! + w[3]! * curves[i + 3]!
}

/** Two fields of a surface at once, into `values`: sixteen coefficients each, from index `i` on. */
function blend(width: number, f: Float64Array, g: Float64Array, i: number): void {
  const a = rowWeights[0]!
  const b = rowWeights[1]!
  const c = rowWeights[2]!
  const d = rowWeights[3]!
  const w = columnWeights[0]!
  const x = columnWeights[1]!
  const y = columnWeights[2]!
  const z = columnWeights[3]!
  const j = i + width
  const k = j + width
  const l = k + width
  values[0] =
    a * (w * f[i]! + x * f[i + 1]! + y * f[i + 2]! + z * f[i + 3]!) +
    b * (w * f[j]! + x * f[j + 1]! + y * f[j + 2]! + z * f[j + 3]!) +
    c * (w * f[k]! + x * f[k + 1]! + y * f[k + 2]! + z * f[k + 3]!) +
    d * (w * f[l]! + x * f[l + 1]! + y * f[l + 2]! + z * f[l + 3]!)
  values[1] =
    a * (w * g[i]! + x * g[i + 1]! + y * g[i + 2]! + z * g[i + 3]!) +
    b * (w * g[j]! + x * g[j + 1]! + y * g[j + 2]! + z * g[j + 3]!) +
    c * (w * g[k]! + x * g[k + 1]! + y * g[k + 2]! + z * g[k + 3]!) +
    d * (w * g[l]! + x * g[l + 1]! + y * g[l + 2]! + z * g[l + 3]!)
}

/** One field of a surface. */
function blendOne({ columns }: Surface, f: Float64Array, i: number): number {
  const w = columnWeights[0]!
  const x = columnWeights[1]!
  const y = columnWeights[2]!
  const z = columnWeights[3]!
  const j = i + columns + 2
  const k = j + columns + 2
  const l = k + columns + 2
  return (
    rowWeights[0]! * (w * f[i]! + x * f[i + 1]! + y * f[i + 2]! + z * f[i + 3]!) +
    rowWeights[1]! * (w * f[j]! + x * f[j + 1]! + y * f[j + 2]! + z * f[j + 3]!) +
    rowWeights[2]! * (w * f[k]! + x * f[k + 1]! + y * f[k + 2]! + z * f[k + 3]!) +
    rowWeights[3]! * (w * f[l]! + x * f[l + 1]! + y * f[l + 2]! + z * f[l + 3]!)
  )
}

/** The weights of `spline.ts`. */
function setWeights(out: Float64Array, t: number): void {
  const s = 1 - t
  out[0] = s * s * s * SIXTH
  out[1] = t * t * (0.5 * t - 1) + TWO_THIRDS
  out[2] = s * s * (0.5 * s - 1) + TWO_THIRDS
  out[3] = t * t * t * SIXTH
}

/** The cell that a place lies in; the ends belong to the first and the last one. */
function cell(place: number, cells: number): number {
  const k = place | 0
  return k < cells ? k : cells - 1
}
