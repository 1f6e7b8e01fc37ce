import { type Dose, FINDINGS, type LearntTwin } from '@chargewright/charging'
import { statedSd } from '@chargewright/cycle'
import { COVERAGE, format, quantity, render, type UnitPreference } from '@chargewright/quantity'
import { columns } from '../text/columns.ts'
import { evidenceWriter } from '../text/evidence-writer.ts'
import { page, section, spread } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { DoseAnswer } from './dose.ts'
import { learntParameters } from './learnt-parameters.ts'

/** How much to move with its interval, or why nothing; then what the readings taught. */
export function doseText({ visit, assessment, learnt }: DoseAnswer, units: UnitPreference, width: number): string {
  const { finding } = assessment
  const { dose } = finding
  const writer = evidenceWriter(units, width)
  const para = (text: string) => wrap(text, width, '  ')
  const interval = dose?.interval
    ? para(
        `The whole way to the target is ${format(dose.interval.low, units)} to ${format(dose.interval.high, units)} in nine of ten such cases.`,
      )
    : []
  return page(
    dose
      ? [
          ...spread(`${FINDINGS[finding.kind]} ${format(dose.mass, units)}`, sizedBy(dose), width),
          ...interval,
          ...(dose.withoutTwin ? para(`No twin sized this step: ${render(dose.withoutTwin, units)}.`) : []),
        ]
      : [...spread('no dose', FINDINGS[finding.kind], width), ...para(`${render(finding.sentence, units)}.`)],
    section(
      'Do',
      finding.steps.flatMap((step, i) => wrap(render(step, units), width, `  ${i + 1}. `)),
    ),
    section('Because', dose ? writer.tree(dose.evidence, 2) : []),
    section(
      'What the readings taught',
      learnt.ok ? learntLines(learnt.value, units, width) : para(`Nothing: ${render(learnt.error, units)}.`),
    ),
    section(
      'Sources',
      writer.sources().flatMap((source, i) => wrap(source, width, `  ${`${i + 1}`.padStart(2)} `)),
    ),
    spread(`Visit ${visit.id}`, `rules ${assessment.version}`, width),
  )
}

function sizedBy({ interval, withoutTwin }: Dose): string {
  if (interval) return 'estimated by model'
  return withoutTwin ? 'without a model of this system' : 'by weight'
}

function learntLines({ system, learned, sets }: LearntTwin, units: UnitPreference, width: number): readonly string[] {
  const charge = format(quantity('mass', learned.charge_kg, statedSd(system, learned.chargeSd_kg)), units, true)
  const from = sets.length === 1 ? 'one set of readings' : `${sets.length} sets of readings`
  const percent = (share: number) => `${share < 0 ? '−' : '+'}${Math.abs(100 * share).toFixed(0)}`
  const rows = learntParameters(learned).map(({ meaning, factor, u }) => [
    `  ${meaning.replace(/:.*/, '')}`,
    `${percent(factor - 1)} ± ${(100 * COVERAGE * u * factor).toFixed(0)} %`,
  ])
  return [
    ...wrap(`The system holds ${charge}, from ${from}. Against its nameplate it has:`, width, '  '),
    ...columns(rows, ['left', 'right']),
  ]
}
