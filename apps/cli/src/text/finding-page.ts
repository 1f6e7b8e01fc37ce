import { type Evidence, render, type Statement, type UnitPreference } from '@chargewright/quantity'
import { evidenceWriter } from './evidence-writer.ts'
import { page, section, spread } from './page.ts'
import { wrap } from './wrap.ts'

/** What a check of the visit found, to be written as a page. */
export interface FindingOnPage {
  /** The finding in a word or two, and what was checked. */
  readonly title: readonly [finding: string, check: string]
  readonly sentence: Statement
  readonly steps: readonly Statement[]
  /** What it suggests without being a verdict. */
  readonly suggests?: readonly Statement[]
  readonly reasons: readonly Evidence[]
  readonly cautions?: readonly { readonly statement: Statement; readonly source: string }[]
  readonly notes?: readonly string[]
}

const INDENT = 2

/** The finding first, then what to do, then why: the order in which an assessment is written. */
export function findingPage(finding: FindingOnPage, units: UnitPreference, width: number): string {
  const writer = evidenceWriter(units, width)
  const words = (statement: Statement) => render(statement, units)
  const item = (mark: string, text: string) => wrap(text, width, `${' '.repeat(INDENT)}${mark} `)
  const because = finding.reasons.flatMap((reason) => writer.tree(reason, INDENT))
  const care = (finding.cautions ?? []).flatMap((c) => item('!', `${words(c.statement)}\u00a0${writer.cite(c.source)}`))
  return page(
    [...spread(...finding.title, width), ...wrap(`${words(finding.sentence)}.`, width, ' '.repeat(INDENT))],
    section(
      'Do',
      finding.steps.flatMap((step, i) => item(`${i + 1}.`, words(step))),
    ),
    section(
      'Check, the easiest first',
      (finding.suggests ?? []).flatMap((each) => item('·', words(each))),
    ),
    section('Because', because),
    section('Take care', care),
    section(
      'Sources',
      writer.sources().flatMap((source, i) => item(`${i + 1}`.padStart(2), source)),
    ),
    (finding.notes ?? []).flatMap((note) => wrap(note, width)),
  )
}
