import type { Readings, Solution } from '@chargewright/cycle'
import { format, quantity, render, type UnitPreference } from '@chargewright/quantity'
import { APPLICATIONS, METERING_DEVICES } from '@chargewright/visit'
import { columns } from '../text/columns.ts'
import { page, section, spread } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import { outcomeWords } from './outcome-words.ts'
import type { TwinAnswer } from './twin.ts'
import { TWIN_READINGS, type TwinReading, WHAT_IF_COLUMNS } from './twin-readings.ts'
import { whatIfAxis } from './what-if-axis.ts'

/** The sized system, how it runs, and how that changes along the axis asked for. */
export function twinText(answer: TwinAnswer, units: UnitPreference, width: number): string {
  const { conditions, charge_kg, solution, system } = answer
  const { outdoor, indoor } = conditions
  const shown = (dimension: TwinReading['dimension'], si: number) => format(quantity(dimension, si), units)
  const temperature = (K: number) => shown('temperature', K)
  const value = (readings: Readings, { name, dimension }: TwinReading) =>
    shown(dimension, readings[name] - (dimension === 'gauge pressure' ? indoor.pressure_Pa : 0))
  const indented = (rows: readonly string[]) => rows.map((row) => `  ${row}`)
  const share = `${(100 * (charge_kg / system.rated.charge_kg)).toFixed(0)} %`

  return page(
    [
      ...spread(`Twin of ${answer.visit.system.facts.name ?? 'the system'}`, 'estimated by model', width),
      ...wrap(systemWords(answer, units), width, '  '),
    ],
    [
      ...wrap(
        `At ${temperature(outdoor.dryBulb_K)} outdoors, return air ${temperature(indoor.dryBulb_K)} with a wet bulb of ${temperature(indoor.wetBulb_K)}, charge ${shown('mass', charge_kg)} (${share} of the nameplate)`,
        width,
      ),
      ...(solution.kind === 'steady' && solution.outcomes.length === 0 ? ['  It runs steadily.'] : []),
      ...outcomeWords(solution).flatMap((each) => wrap(`${render(each, units)}.`, width, '  ! ')),
    ],
    solution.kind === 'steady'
      ? indented(
          columns(
            TWIN_READINGS.map((each) => [each.label, value(solution.readings, each)]),
            ['left', 'right'],
          ),
        )
      : [],
    whatIfSection(answer, units, value, width),
  )
}

function systemWords({ visit, system }: TwinAnswer, units: UnitPreference): string {
  const { refrigerant, meteringDevice, application, receiver } = visit.system.facts
  const { capacity_W, charge_kg, superheat_K, subcooling_K } = system.rated
  const shown = (dimension: TwinReading['dimension'], si: number) => format(quantity(dimension, si), units)
  const parts = [
    refrigerant,
    meteringDevice && METERING_DEVICES[meteringDevice],
    application && APPLICATIONS[application],
    receiver && 'receiver',
    shown('cooling capacity', capacity_W),
    shown('mass', charge_kg),
  ]
  const rated = `rated at ${shown('temperature difference', superheat_K)} superheat and ${shown('temperature difference', subcooling_K)} subcooling`
  return `${parts.filter(Boolean).join(', ')}; ${rated}.`
}

function whatIfSection(
  { whatIf }: TwinAnswer,
  units: UnitPreference,
  value: (readings: Readings, reading: TwinReading) => string,
  width: number,
): readonly string[] {
  if (!whatIf) return []
  const { label, dimension } = whatIfAxis(whatIf.axis)
  const along = (si: number) =>
    dimension === 'share' ? `${(100 * si).toFixed(0)} %` : format(quantity(dimension, si), units)
  const marks: string[] = []
  const markOf = (solution: Solution) =>
    outcomeWords(solution)
      .map((each) => {
        // A figure changes along the axis; what it means does not.
        const meaning = render(each, units).replace(/[:,] .*$/, '')
        if (!marks.includes(meaning)) marks.push(meaning)
        return String.fromCharCode(97 + marks.indexOf(meaning))
      })
      .join(' ')
  const rows = whatIf.points.map(({ value: at, solution }) => [
    along(at),
    ...WHAT_IF_COLUMNS.map((column) => (solution.kind === 'steady' ? value(solution.readings, column) : '–')),
    markOf(solution),
  ])
  const table = columns(
    [['', ...WHAT_IF_COLUMNS.map(({ head }) => head), ''], ...rows],
    [...WHAT_IF_COLUMNS.map(() => 'right' as const), 'right', 'left'],
  )
  const notes = marks.flatMap((meaning, i) => wrap(meaning, width, `  ${String.fromCharCode(97 + i)} `))
  return section(`What if: ${label.toLowerCase()}`, [...table.map((row) => `  ${row}`), ...notes])
}
