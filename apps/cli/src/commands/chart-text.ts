import type { ChargingChart, ChartCell } from '@chargewright/cycle'
import { findUnit, formatNumber, preferredUnit, quantity, type UnitPreference } from '@chargewright/quantity'
import { columns } from '../text/columns.ts'
import { page, spread } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { ChartAnswer } from './chart.ts'

/** Why a cell has no target: its sign in the table, and what that means. */
const NO_TARGET: Readonly<Record<Extract<ChartCell, { kind: 'none' }>['because'], readonly [string, string]>> = {
  'below-least-target': ['–', 'too low for a test in this weather'],
  flooded: ['L', 'liquid would reach the compressor'],
  frost: ['F', 'ice would grow on the coil'],
  'high-pressure-trip': ['H', 'the high-pressure switch would open'],
  'low-pressure-trip': ['P', 'the low-pressure switch would open'],
  'flashing-at-device': ['V', 'vapour would reach the metering device'],
  'receiver-empty': ['E', 'the receiver would be empty'],
  'receiver-full': ['R', 'the receiver would be full'],
  'valve-wide-open': ['W', 'the valve would be wide open'],
  overfull: ['O', 'the charge would not fit'],
  'no-solution': ['?', 'the model found no state'],
}

/** The chart as a table: a row per outdoor temperature, a column per temperature indoors. */
export function chartText({ visit, chart }: ChartAnswer, units: UnitPreference, width: number): string {
  const unit = chartUnit(units)
  const round = (K: number) => `${Math.round(unit === '°F' ? (K - 273.15) * 1.8 + 32 : K - 273.15)}`
  const differenceUnit = findUnit(unit === '°F' ? '°F' : 'K', 'temperature difference')
  const difference = (K: number) =>
    formatNumber(
      quantity('temperature difference', K),
      differenceUnit ?? preferredUnit('temperature difference', units),
    )
  const cell = (each: ChartCell) => (each.kind === 'target' ? difference(each.value_K) : NO_TARGET[each.because][0])
  const rows = chart.cells.map((row, i) => [round(chart.outdoor_K[i]!), ...row.map(cell)])
  const head = ['', ...chart.indoor_K.map(round)]
  const met = chart.cells.flat().find((each) => each.kind === 'target')
  return page(
    [
      ...spread(`${titleOf(chart)} of ${visit.system.facts.name ?? 'the system'}`, chart.source, width),
      ...wrap(`${axesOf(chart)}, ${unit}, at sea level and the nameplate charge.`, width, '  '),
    ],
    columns(
      [head, ...rows],
      head.map(() => 'right' as const),
    ),
    [
      ...(met
        ? [`Met within ± ${difference(met.high_K - met.value_K)} ${differenceUnit?.symbol ?? ''} of the target.`]
        : []),
      ...reasonsIn(chart).map(([sign, meaning]) => `${sign}  ${meaning}`),
      ...wrap("A maker's own chart goes before this one.", width),
    ],
  )
}

export const chartUnit = (units: UnitPreference): '°F' | '°C' => (units.temperature === '°F' ? '°F' : '°C')

const titleOf = ({ measure }: ChargingChart) =>
  measure === 'superheat_K' ? 'Charging chart by superheat' : 'Charging chart by subcooling'

function axesOf({ family }: ChargingChart): string {
  return family.kind === 'wet-bulb'
    ? 'Down: outdoor dry bulb. Across: wet bulb of the return air'
    : `Down: outdoor dry bulb. Across: dry bulb of the return air at ${(100 * family.relativeHumidity).toFixed(0)} % humidity`
}

function reasonsIn({ cells }: ChargingChart): readonly (readonly [string, string])[] {
  const found = new Set(cells.flat().flatMap((cell) => (cell.kind === 'none' ? [cell.because] : [])))
  return [...found].map((because) => NO_TARGET[because])
}
