import { optional } from '../quantity-json.ts'
import type { ChartAnswer } from './chart.ts'

/** The chart, a row per outdoor temperature; a cell has its target with the band in which it is met, or why it has none. */
export function chartJson({ visit, chart }: ChartAnswer): object {
  const { source, measure, family, outdoor_K, indoor_K, cells } = chart
  return {
    source,
    ...optional('name', visit.system.facts.name),
    measure: measure === 'superheat_K' ? 'superheat' : 'subcooling',
    family: family.kind,
    ...(family.kind === 'dry-bulb' ? { humidity_fraction: family.relativeHumidity } : {}),
    outdoor_K,
    indoor_K,
    cells: cells.map((row) =>
      row.map((cell) =>
        cell.kind === 'target'
          ? { target_K: cell.value_K, low_K: cell.low_K, high_K: cell.high_K }
          : { no_target: cell.because },
      ),
    ),
  }
}
