import { isDeepStrictEqual } from 'node:util'
import { RATING_WORDS, type SupplyFinding } from '@chargewright/compressor'
import { type Statement, say, type UnitPreference } from '@chargewright/quantity'
import { findingPage } from '../text/finding-page.ts'
import type { CompressorAnswer, Judged } from './compressor.ts'

/** What is expected of the compressor, and what was measured against it. */
export function compressorText(answer: CompressorAnswer, units: UnitPreference, width: number): string {
  const { suctionDew, dischargeDew, expected, judged, fromSystem, gasAssumed } = answer
  const first = judged.find(({ judgement }) => judgement.side !== 'inside') ?? judged[0]
  const assumed = gasAssumed ? 'The return gas was not given: it was taken as rated. ' : ''
  return findingPage(
    {
      title: [finding(judged), 'compressor against its rating'],
      sentence: first
        ? first.judgement.evidence.statement
        : say`At dew temperatures of ${suctionDew} and ${dischargeDew}, a sound one would show what is said below`,
      steps: [],
      suggests: suggestionsOf(judged),
      reasons: [
        ...judged.map(({ judgement }) => judgement.evidence),
        ...expected
          .filter(({ rating }) => judged.every(({ what }) => what !== rating.what))
          .map(({ evidence }) => evidence),
      ],
      notes: [
        ...(fromSystem
          ? [`The ${fromSystem} is that of the whole system, by its curve: it goes before the compressor’s.`]
          : []),
        `${assumed}± is about 95 %; where none was typed, that of a plain instrument.`,
      ],
    },
    units,
    width,
  )
}

/** `power above the band, current inside the band`; of one alone only where it lies. */
function finding(judged: readonly Judged[]): string {
  if (judged.length === 0) return 'expected'
  return judged
    .map(({ what, judgement: { side } }) =>
      judged.length === 1 ? RATING_WORDS[side] : `${what} ${RATING_WORDS[side]}`,
    )
    .join(', ')
}

/** Each once. That it runs as rated is only said where nothing speaks against it. */
function suggestionsOf(judged: readonly Judged[]): readonly Statement[] {
  const off = judged.filter(({ judgement }) => judgement.side !== 'inside')
  const all = (off.length > 0 ? off : judged).flatMap(({ judgement }) => judgement.suggests)
  return all.filter((each, i) => all.findIndex((earlier) => isDeepStrictEqual(earlier, each)) === i)
}

/** The supply as a page. */
export function supplyText({ kind, reasons, steps }: SupplyFinding, units: UnitPreference, width: number): string {
  const sentence = {
    sound: say`Neither voltage nor unbalance is in the way`,
    doubtful: say`It may run until the supply is put right, but not judged by its amps`,
    stop: say`Do not run it`,
  }[kind]
  return findingPage({ title: [kind, 'supply voltage'], sentence, steps, reasons }, units, width)
}
