import { type CompressorType, chargingChart, size, soundHealth } from '../../packages/cycle/src/index.ts'
import grid from '../../packages/cycle/test/data/target-superheat.json' with { type: 'json' }
import { tables } from './draw-state.ts'

/** The twin's charging chart beside the published grid and the trade's rule, cell by cell: model/grid/rule in °F. */
const kelvin = (F: number) => (F + 459.67) / 1.8
const wetBulb_F = grid.wetBulb_F.filter((F) => F >= 56 && F % 4 === 0)
const outdoor_F = grid.rows.map((row) => row.outdoor_F)
const units: readonly (readonly [string, number, CompressorType])[] = [
  ['R-22', 2.8, 'reciprocating'],
  ['R-410A', 3.3, 'scroll'],
]

for (const [name, cop, compressorType] of units) {
  const system = size({
    properties: tables(name),
    application: 'comfort-cooling',
    device: 'fixed-orifice',
    capacity_W: 10_550,
    charge_kg: 3.2,
    efficiency: { kind: 'cop', cop },
    compressorType,
  })
  if (!system.ok) throw new Error(`${name} does not size`)
  const axes = [outdoor_F.map(kelvin), wetBulb_F.map(kelvin)] as const
  const chart = chargingChart(system.value, soundHealth(system.value), 'superheat_K', { kind: 'wet-bulb' }, ...axes)
  if (!chart.ok) throw new Error(`${name} has no chart`)
  console.log(`${name}, ${compressorType}: outdoor °F down, wet bulb °F across ${wetBulb_F.join(', ')}`)
  for (const [i, row] of chart.value.cells.entries()) {
    const cells = row.map((cell, j) => {
      const model = cell.kind === 'target' ? (cell.value_K * 1.8).toFixed(1) : '-'
      const published = grid.rows[i]!.superheat_F[grid.wetBulb_F.indexOf(wetBulb_F[j]!)] ?? '-'
      return `${model}/${published}/${(3 * wetBulb_F[j]! - 80 - outdoor_F[i]!) / 2}`
    })
    console.log(`  ${String(outdoor_F[i]).padStart(3)}  ${cells.map((cell) => cell.padEnd(16)).join('')}`)
  }
}
