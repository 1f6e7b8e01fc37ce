import type { RatingSide, SupplyFinding } from '@chargewright/compressor'
import { say, type UnitPreference } from '@chargewright/quantity'
import { findingPage } from '../text/finding-page.ts'
import type { CompressorAnswer } from './compressor.ts'

const SIDES: Readonly<Record<RatingSide, string>> = {
  inside: 'inside the band',
  below: 'below the band',
  above: 'above the band',
  'too-close': 'cannot tell',
}

/** What is expected of the compressor, and its current against it. */
export function compressorText(answer: CompressorAnswer, units: UnitPreference, width: number): string {
  const { suctionDew, dischargeDew, expected, judgement, gasAssumed } = answer
  const assumed = gasAssumed ? 'The return gas was not given: it was taken as rated. ' : ''
  return findingPage(
    {
      title: [judgement ? SIDES[judgement.side] : 'expected', 'compressor against its rating'],
      sentence: judgement
        ? judgement.evidence.statement
        : say`At dew temperatures of ${suctionDew} and ${dischargeDew}, a sound one would show what is said below`,
      steps: [],
      suggests: judgement?.suggests ?? [],
      reasons: [
        ...(judgement ? [judgement.evidence] : []),
        ...expected.filter(({ rating }) => !judgement || rating.what !== 'current').map(({ evidence }) => evidence),
      ],
      notes: [`${assumed}± is about 95 %; where none was typed, that of a plain instrument.`],
    },
    units,
    width,
  )
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
