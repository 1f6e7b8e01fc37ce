import { FINDINGS, type ProcedureStep, type VisitWeighIn } from '@chargewright/charging'
import { describeProblem, format, type Measure, render, type UnitPreference } from '@chargewright/quantity'
import { evidenceWriter } from '../text/evidence-writer.ts'
import { page, section, spread } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'

/** How much goes in and why so much, then the sequence with its waits and stops. */
export function weighInText(answer: VisitWeighIn, units: UnitPreference, width: number): string {
  const { charge, toGoIn, measured, procedure, assessment, stillCharged } = answer
  const writer = evidenceWriter(units, width)
  const words = (statement: Parameters<typeof render>[0]) => render(statement, units)
  const under = (mark: string, text: string) => wrap(text, width, `     ${mark} `)
  const step = ({ act, wait, goOnWhen, stops }: ProcedureStep, i: number) => [
    ...wrap(words(act), width, `${`${i + 1}`.padStart(3)}. `),
    ...(wait ? under('wait', `${format(wait, units)}`) : []),
    ...(goOnWhen ? under('go on when', words(goOnWhen)) : []),
    ...stops.flatMap(({ seen, after, means, instead }) =>
      under(
        'stop if',
        `${after ? `after ${format(after, units)}: ` : ''}${words(seen)}. ${words(means)}: ${words(instead)}`,
      ),
    ),
  ]
  return page(
    [
      ...spread(toGoIn ? `weigh in ${format(toGoIn, units)}` : FINDINGS[assessment.finding.kind], 'by weight', width),
      ...wrap(`${words(assessment.finding.sentence)}.`, width, '  '),
      ...(stillCharged ? wrap('This is for when it is empty: the sequence tells how it gets there.', width, '  ') : []),
    ],
    section(
      'Left out, because it cannot be read',
      assessment.problems.flatMap(({ problem }) => wrap(describeProblem(problem), width, '  · ')),
    ),
    section('How much', writer.tree(charge.evidence, 2)),
    section(
      'Measured out',
      Object.values(measured ?? {}).flatMap(({ evidence }: Measure) => writer.tree(evidence, 2)),
    ),
    section('Sequence', procedure.flatMap(step)),
    section(
      'Take care',
      assessment.cautions.flatMap((c) => wrap(`${words(c.statement)}\u00a0${writer.cite(c.source)}`, width, '  ! ')),
    ),
    section(
      'Sources',
      writer.sources().flatMap((source, i) => wrap(source, width, `  ${`${i + 1}`.padStart(2)} `)),
    ),
  )
}
