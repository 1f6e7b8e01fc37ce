import { cell, columnPlace, holds, rowPlace } from './grid.ts'
import { CURVE, type PropertyTable, type Surface } from './property-table.ts'
import { inner, outer, weigh } from './spline.ts'

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
 * The state at a pressure and an enthalpy. Returns false, leaving `out` alone, outside the table: pressure outside its
 * range, more than 60 K subcooled or 100 K superheated, or not a number.
 *
 * The sums over the sixteen coefficients are written out, and the weights are plain locals: through arrays or further
 * functions the same sums take a tenth longer.
 */
export function lookUp(table: PropertyTable, pressure: number, enthalpy: number, out: TableState): boolean {
  if (!holds(table, pressure)) return false
  const { curves, rows } = table
  const stride = rows + 2
  const down = rowPlace(table, pressure)
  const row = cell(down, rows - 1)
  const t = down - row
  const a = outer(1 - t)
  const b = inner(t)
  const c = inner(1 - t)
  const d = outer(t)
  const hL = weigh(curves, CURVE.liquidEnthalpy * stride + row, a, b, c, d)
  const hV = weigh(curves, CURVE.vapourEnthalpy * stride + row, a, b, c, d)
  if (enthalpy >= hL && enthalpy <= hV) {
    const z = (enthalpy - hL) / (hV - hL)
    const bubble = weigh(curves, CURVE.bubbleTemperature * stride + row, a, b, c, d)
    const dew = weigh(curves, CURVE.dewTemperature * stride + row, a, b, c, d)
    const rhoL = weigh(curves, CURVE.liquidDensity * stride + row, a, b, c, d)
    const pvV = weigh(curves, CURVE.vapourPressureVolume * stride + row, a, b, c, d)
    out.region = 'two-phase'
    out.temperature_K = bubble + z * (dew - bubble)
    out.quality = z
    const { dome } = table
    const share = dome ? z * domeOver(dome, down / dome.every, (rows - 1) / dome.every, z, out) : z
    // 1/ρ = v_l + share·(v_v − v_l), times p and ρ_l, which leaves one division.
    out.density_kg_m3 = (pressure * rhoL) / (pressure + share * (pvV * rhoL - pressure))
    return true
  }
  const isVapour = enthalpy > hV
  const surface = isVapour ? table.vapour : table.liquid
  const beyond = isVapour ? enthalpy - hV : hL - enthalpy
  const range = weigh(curves, (isVapour ? CURVE.vapourRange : CURVE.liquidRange) * stride + row, a, b, c, d)
  if (!(beyond <= range)) return false
  const across = columnPlace(surface, beyond, range)
  const column = cell(across, surface.columns - 1)
  const u = across - column
  const w = outer(1 - u)
  const x = inner(u)
  const y = inner(1 - u)
  const z = outer(u)
  const { temperature: f, volume: g } = surface
  const width = surface.columns + 2
  const i = row * width + column
  const j = i + width
  const k = j + width
  const l = k + width
  const temperature =
    a * (w * f[i]! + x * f[i + 1]! + y * f[i + 2]! + z * f[i + 3]!) +
    b * (w * f[j]! + x * f[j + 1]! + y * f[j + 2]! + z * f[j + 3]!) +
    c * (w * f[k]! + x * f[k + 1]! + y * f[k + 2]! + z * f[k + 3]!) +
    d * (w * f[l]! + x * f[l + 1]! + y * f[l + 2]! + z * f[l + 3]!)
  const volume =
    a * (w * g[i]! + x * g[i + 1]! + y * g[i + 2]! + z * g[i + 3]!) +
    b * (w * g[j]! + x * g[j + 1]! + y * g[j + 2]! + z * g[j + 3]!) +
    c * (w * g[k]! + x * g[k + 1]! + y * g[k + 2]! + z * g[k + 3]!) +
    d * (w * g[l]! + x * g[l + 1]! + y * g[l + 2]! + z * g[l + 3]!)
  out.region = isVapour ? 'vapour' : 'liquid'
  out.temperature_K = temperature
  out.density_kg_m3 = isVapour ? pressure / volume : volume
  out.quality = isVapour ? 1 : 0
  return true
}

/** Adds to T and quality their departures from the straight line, and returns the factor by which that of v bends. */
function domeOver(dome: Surface, down: number, cells: number, share: number, out: TableState): number {
  const row = cell(down, cells)
  const t = down - row
  const a = outer(1 - t)
  const b = inner(t)
  const c = inner(1 - t)
  const d = outer(t)
  const across = columnPlace(dome, share, 1)
  const column = cell(across, dome.columns - 1)
  const u = across - column
  const w = outer(1 - u)
  const x = inner(u)
  const y = inner(1 - u)
  const z = outer(u)
  const { temperature: f, quality: q, volume: g } = dome
  const width = dome.columns + 2
  const i = row * width + column
  const j = i + width
  const k = j + width
  const l = k + width
  out.temperature_K +=
    a * (w * f[i]! + x * f[i + 1]! + y * f[i + 2]! + z * f[i + 3]!) +
    b * (w * f[j]! + x * f[j + 1]! + y * f[j + 2]! + z * f[j + 3]!) +
    c * (w * f[k]! + x * f[k + 1]! + y * f[k + 2]! + z * f[k + 3]!) +
    d * (w * f[l]! + x * f[l + 1]! + y * f[l + 2]! + z * f[l + 3]!)
  out.quality +=
    a * (w * q[i]! + x * q[i + 1]! + y * q[i + 2]! + z * q[i + 3]!) +
    b * (w * q[j]! + x * q[j + 1]! + y * q[j + 2]! + z * q[j + 3]!) +
    c * (w * q[k]! + x * q[k + 1]! + y * q[k + 2]! + z * q[k + 3]!) +
    d * (w * q[l]! + x * q[l + 1]! + y * q[l + 2]! + z * q[l + 3]!)
  return (
    a * (w * g[i]! + x * g[i + 1]! + y * g[i + 2]! + z * g[i + 3]!) +
    b * (w * g[j]! + x * g[j + 1]! + y * g[j + 2]! + z * g[j + 3]!) +
    c * (w * g[k]! + x * g[k + 1]! + y * g[k + 2]! + z * g[k + 3]!) +
    d * (w * g[l]! + x * g[l + 1]! + y * g[l + 2]! + z * g[l + 3]!)
  )
}
