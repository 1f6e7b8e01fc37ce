import { type Clock, leakRateOfSystem, type SystemLeakRate } from '@chargewright/ledger'
import { type Evidence, evidence, problemStatement, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { Check } from './check.ts'
import { notJudged } from './not-judged.ts'
import { sentenceFirst } from './sentence-first.ts'

/**
 * The leak rate by law, where this visit made the last addition: else it was told in the record of the one that did.
 *
 * @param visits to the system up to this one, the earliest first
 */
export function leakRateChecks(visit: Visit, ...[visits, use]: Parameters<typeof leakRateOfSystem>): readonly Check[] {
  if (netAdded(visit) <= 0) return []
  const found = leakRateOfSystem(visits, use)
  if (!found.ok) return [notJudged(LEAK_RATE, found.error)]
  const { laws, on } = found.value
  if (laws.length > 0) return laws.map(lawCheck)
  const sentence = say`After the addition of ${on} no leak-repair law on file applies to this charge and refrigerant`
  return [{ title: LEAK_RATE, verdict: say`no law applies`, sentence, reasons: [] }]
}

function lawCheck({ coverage, rates, clocks }: SystemLeakRate['laws'][number]): Check {
  const told = rates.map((rate) =>
    rate.ok ? evidence(rate.value.sentence, rate.value.source) : evidence(problemStatement(rate.error)),
  )
  const unsure = coverage.verdict === 'cannot-tell' ? [evidence(coverage.because, coverage.source)] : []
  const isOver = rates.some((rate) => rate.ok && rate.value.over)
  const isTold = rates.some((rate) => rate.ok)
  return {
    title: say`${LEAK_RATE}, ${coverage.law.title}`,
    verdict: isOver ? say`over the threshold` : isTold ? say`not over the threshold` : say`not judged`,
    ...sentenceFirst([...told, ...unsure, ...clocks.map(clockInWords)]),
  }
}

const LEAK_RATE = say`Leak rate`

const clockInWords = ({ what, due, source }: Clock): Evidence =>
  evidence(due.kind === 'by' ? say`${what}: by ${due.day}` : say`${what}: waits for ${due.for}`, source)

const netAdded = ({ moves }: Visit) =>
  moves.reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)
