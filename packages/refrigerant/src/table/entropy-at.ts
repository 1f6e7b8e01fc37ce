import { cell, columnPlace, holds, rowPlace } from './grid.ts'
import { CURVE, type PropertyTable, type Surface } from './property-table.ts'
import { inner, outer, weigh, weights } from './spline.ts'

/** Weights of the four rows around a pressure, or of those of the dome. */
const w = new Float64Array(4)

/** Entropy at a pressure and an enthalpy, J/(kg·K); NaN outside the table. */
export function entropyAt(table: PropertyTable, pressure: number, enthalpy: number): number {
  if (!holds(table, pressure)) return Number.NaN
  const { curves, rows, liquid, vapour, dome } = table
  const stride = rows + 2
  const down = rowPlace(table, pressure)
  const row = cell(down, rows - 1)
  weights(down - row, w)
  const hL = onCurve(curves, CURVE.liquidEnthalpy * stride + row)
  const hV = onCurve(curves, CURVE.vapourEnthalpy * stride + row)
  if (enthalpy >= hL && enthalpy <= hV) {
    const z = (enthalpy - hL) / (hV - hL)
    const sL = onCurve(curves, CURVE.liquidEntropy * stride + row)
    const sV = onCurve(curves, CURVE.vapourEntropy * stride + row)
    const straight = sL + z * (sV - sL)
    if (!dome) return straight
    const domeRow = cell(down / dome.every, (rows - 1) / dome.every)
    weights(down / dome.every - domeRow, w)
    return straight + onSurface(dome, domeRow, columnPlace(dome, z, 1))
  }
  const isVapour = enthalpy > hV
  const surface = isVapour ? vapour : liquid
  const beyond = isVapour ? enthalpy - hV : hL - enthalpy
  const range = onCurve(curves, (isVapour ? CURVE.vapourRange : CURVE.liquidRange) * stride + row)
  return beyond <= range ? onSurface(surface, row, columnPlace(surface, beyond, range)) : Number.NaN
}

function onCurve(curves: Float64Array, i: number): number {
  return weigh(curves, i, w[0]!, w[1]!, w[2]!, w[3]!)
}

function onSurface({ columns, entropy }: Surface, row: number, across: number): number {
  const column = cell(across, columns - 1)
  const u = across - column
  const a = outer(1 - u)
  const b = inner(u)
  const c = inner(1 - u)
  const d = outer(u)
  const width = columns + 2
  const i = row * width + column
  return (
    w[0]! * weigh(entropy, i, a, b, c, d) +
    w[1]! * weigh(entropy, i + width, a, b, c, d) +
    w[2]! * weigh(entropy, i + 2 * width, a, b, c, d) +
    w[3]! * weigh(entropy, i + 3 * width, a, b, c, d)
  )
}
