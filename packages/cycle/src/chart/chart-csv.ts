import type { ChargingChart } from './charging-chart.ts'

/**
 * A chart as CSV: indoor temperatures in the first line, outdoor ones in the first column, empty where there is no
 * target. The form in which a maker's chart is entered too. The first line names what it is.
 */
export function chartCsv(chart: ChargingChart, unit: '°F' | '°C'): string {
  const point = (K: number) => (unit === '°F' ? (K - 273.15) * 1.8 + 32 : K - 273.15).toFixed(1)
  const difference = (K: number) => (unit === '°F' ? K * 1.8 : K).toFixed(1)
  const head = [`outdoor\\indoor ${chart.family.kind} ${unit}`, ...chart.indoor_K.map(point)]
  const rows = chart.cells.map((row, i) => [
    point(chart.outdoor_K[i]!),
    ...row.map((cell) => (cell.kind === 'target' ? difference(cell.value_K) : '')),
  ])
  return `${[head, ...rows].map((row) => row.join(',')).join('\n')}\n`
}
