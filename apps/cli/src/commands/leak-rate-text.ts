import { bookUnits, type Clock } from '@chargewright/ledger'
import { describeProblem, render, type UnitPreference } from '@chargewright/quantity'
import { page, section } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { LawAnswer, LeakRateAnswer } from './leak-rate.ts'

/** Leak rates by both methods under every law that holds, what is due when, and what the charge is worth in CO₂. */
export function leakRateText(answer: LeakRateAnswer, preference: UnitPreference, width: number): string {
  const units = bookUnits(preference)
  const { refrigerant, on, laws, co2, euCheck } = answer
  const item = (confirmed: boolean, text: string, source: string) =>
    wrap(`${text} (${source})`, width, confirmed ? '  · ' : '  * ')
  const clockItem = ({ what, due, source, confirmed }: Clock) => {
    const when = due.kind === 'by' ? `by ${due.day}` : `waits for ${render(due.for, units)}`
    return item(confirmed, `${render(what, units)}: ${when}`, source)
  }
  const law = ({ coverage, rates, clocks, chronic }: LawAnswer) =>
    section(coverage.law.title, [
      ...item(coverage.confirmed, `${COVERS[coverage.verdict]}: ${render(coverage.because, units)}`, coverage.source),
      ...rates.flatMap(({ method, judged }) =>
        judged.ok
          ? item(
              judged.value.verdict.confirmed,
              render(judged.value.verdict.sentence, units),
              judged.value.verdict.source,
            )
          : item(true, `No rate by the ${method} method: ${describeProblem(judged.error)}`, coverage.law.id),
      ),
      ...clocks.flatMap(clockItem),
      ...item(
        chronic.confirmed,
        `${Number(chronic.percent.toPrecision(4))} % in the calendar year: ${chronic.chronic ? `it leaks chronically, report by ${chronic.reportBy}` : 'not chronic'}`,
        chronic.source,
      ),
    ])
  return page(
    [`${refrigerant}, after the addition of ${on.slice(0, 10)}`],
    ...laws.map(law),
    laws.length === 0 ? ['No leak-repair law on file holds for it.'] : [],
    section('EU, leak checks', item(euCheck.confirmed, render(euCheck.because, units), euCheck.source)),
    section(
      'CO₂ equivalent of the full charge',
      co2.ok
        ? item(
            co2.value.confirmed,
            `${Number(co2.value.tonnes.toPrecision(4))} t at a potential of ${co2.value.gwp} (${co2.value.edition})`,
            co2.value.source,
          )
        : item(false, describeProblem(co2.error), 'not on file'),
    ),
    wrap(
      '* not read in the law or the table itself, but recalled or from another’s account: look it up. No legal advice.',
      width,
    ),
  )
}

const COVERS = {
  applies: 'Applies',
  'does-not-apply': 'Does not apply',
  'cannot-tell': 'Cannot tell whether it applies',
} as const
