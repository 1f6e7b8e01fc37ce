import { type CompressorType, chargingChart, size, soundHealth } from '../../packages/cycle/src/index.ts'
import grid from '../../packages/cycle/test/data/target-superheat.json' with { type: 'json' }
import { tables } from './draw-state.ts'

const kelvin = (F: number) => (F + 459.67) / 1.8
const wetBulb_F = grid.wetBulb_F.filter((F) => F >= 56)
const outdoor_F = grid.rows.map((row) => row.outdoor_F)
const LEAST_TARGET_F = 5

/** The charging chart of a unit of default sizing beside the published grid and the trade's rule, where they have 5 °F or more. */
export function targetGrid(refrigerant: string, cop: number, compressorType: CompressorType) {
  const system = size({
    properties: tables(refrigerant),
    application: 'comfort-cooling',
    device: 'fixed-orifice',
    capacity_W: 10_550,
    charge_kg: 3.2,
    efficiency: { kind: 'cop', cop },
    compressorType,
  })
  if (!system.ok) throw new Error(`${refrigerant} does not size`)
  const axes = [outdoor_F.map(kelvin), wetBulb_F.map(kelvin)] as const
  const chart = chargingChart(system.value, soundHealth(system.value), 'superheat_K', { kind: 'wet-bulb' }, ...axes)
  if (!chart.ok) throw new Error(`${refrigerant} has no chart`)
  const cells = chart.value.cells.flatMap((row, i) =>
    row.map((cell, j) => {
      const [outdoor, wetBulb] = [outdoor_F[i]!, wetBulb_F[j]!]
      return {
        outdoor_F: outdoor,
        wetBulb_F: wetBulb,
        model_F: cell.kind === 'target' ? cell.value_K * 1.8 : 0,
        grid_F: grid.rows[i]!.superheat_F[grid.wetBulb_F.indexOf(wetBulb)] ?? 0,
        rule_F: (3 * wetBulb - 80 - outdoor) / 2,
      }
    }),
  )
  const rms = (of: 'grid_F' | 'rule_F') => {
    const apart = cells.filter((cell) => cell[of] >= LEAST_TARGET_F).map((cell) => (cell.model_F - cell[of]) ** 2)
    return Math.sqrt(apart.reduce((sum, square) => sum + square, 0) / apart.length)
  }
  return { refrigerant, compressorType, fromGrid_F: rms('grid_F'), fromRule_F: rms('rule_F'), cells }
}
