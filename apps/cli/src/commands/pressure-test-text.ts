import { format, render, type UnitPreference } from '@chargewright/quantity'
import { PRESSURE_TEST_CAUTIONS, PRESSURE_TEST_WORDS, type StandingTest } from '@chargewright/tightness'
import { findingPage } from '../text/finding-page.ts'

/** A standing test as a page: the last reading against the first, and what the readings between them said. */
export function pressureTestText({ findings, last }: StandingTest, units: UnitPreference, width: number): string {
  const before = findings
    .slice(0, -1)
    .map(({ after, finding }) => `After ${format(after, units)}: ${render(finding.sentence, units)}.`)
  return findingPage(
    {
      ...last,
      title: [PRESSURE_TEST_WORDS[last.kind], 'standing pressure test'],
      cautions: PRESSURE_TEST_CAUTIONS,
      notes: [...before, '± is about 95 %; where none was typed, that of a plain instrument.'],
    },
    units,
    width,
  )
}
