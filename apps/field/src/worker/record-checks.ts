import { judgeSupply, type RatedQuantity } from '@chargewright/compressor'
import type { Clock } from '@chargewright/ledger'
import { type Evidence, evidence, type Problem, problemStatement, type Statement, say } from '@chargewright/quantity'
import type { Check } from '@chargewright/report'
import { fold, type Visit } from '@chargewright/visit'
import type { SystemSoFar } from '../session/system-so-far.ts'
import { RATING_SIDES, SUPPLY_WORDS } from './check-words.ts'
import { compressorAsFound, READ_AS } from './compressor-as-found.ts'
import { leakRateOf } from './leak-rate-of.ts'
import type { LeakRateAnswer, VisitEvents } from './protocol.ts'

const COMPRESSOR: Readonly<Partial<Record<RatedQuantity, Statement>>> = {
  power: say`Compressor power`,
  current: say`Compressor current`,
}

/** What the steps of a visit found beside its readings: its supply, its compressor, and after an addition the leak rate. */
export function recordChecks(events: VisitEvents, system: SystemSoFar | undefined): readonly Check[] {
  const visit = fold(events)
  return [...supplyChecks(visit), ...compressorChecks(visit), ...(system ? leakRateChecks(visit, system) : [])]
}

function supplyChecks({ supply }: Visit): readonly Check[] {
  if (!supply) return []
  const found = judgeSupply(supply.voltages, supply.nominal)
  if (!found.ok) return [{ ...notJudged(SUPPLY, found.error), at: supply.at }]
  const { kind, reasons, steps } = found.value
  const [level, ...unbalance] = reasons
  const told = [...unbalance, ...(level ? [level] : []), ...steps.map((step) => evidence(step))]
  return [{ title: SUPPLY, verdict: say`${SUPPLY_WORDS[kind]}`, ...sentenceFirst(told), at: supply.at }]
}

/** Says nothing of a compressor of which nothing was read. */
function compressorChecks(visit: Visit): readonly Check[] {
  const { compressorRating } = visit.system.facts
  const read = READ_AS.some(([, id]) => visit.readings[id])
  if (compressorRating === undefined || !read) return []
  const found = compressorAsFound(compressorRating, visit)
  if (!found.ok) return [notJudged(say`Compressor`, found.error)]
  return found.value.judged.map(({ measured, side, evidence: why, suggests }) => ({
    title: COMPRESSOR[measured.what] ?? say`${measured.what}`,
    verdict: say`${RATING_SIDES[side]}`,
    ...sentenceFirst([why, ...suggests.map((each) => evidence(each))]),
  }))
}

/** Only where this visit made the last addition: else the rate was told in the record of the one that did. */
function leakRateChecks(visit: Visit, { events, use }: SystemSoFar): readonly Check[] {
  if (netAdded(visit) <= 0) return []
  const found = leakRateOf(events, use)
  if (!found.ok) return [notJudged(LEAK_RATE, found.error)]
  const { laws, on } = found.value
  if (laws.length > 0) return laws.map(lawCheck)
  const sentence = say`After the addition of ${on} no leak-repair law on file applies to this charge and refrigerant`
  return [{ title: LEAK_RATE, verdict: say`no law applies`, sentence, reasons: [] }]
}

function lawCheck({ coverage, rates, clocks }: LeakRateAnswer['laws'][number]): Check {
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

const clockInWords = ({ what, due, source }: Clock): Evidence =>
  evidence(due.kind === 'by' ? say`${what}: by ${due.day}` : say`${what}: waits for ${due.for}`, source)

const SUPPLY = say`Supply`
const LEAK_RATE = say`Leak rate`

/** The first of what was found is the sentence of a check; what it rests on and the others follow. */
function sentenceFirst([first, ...others]: readonly Evidence[]): Pick<Check, 'sentence' | 'reasons'> {
  if (!first) return { sentence: say`nothing to judge`, reasons: [] }
  const { statement, source, from } = first
  const behind = source === undefined ? from : [evidence(say`The limit is that of the source`, source), ...from]
  return { sentence: statement, reasons: [...behind, ...others] }
}

const netAdded = ({ moves }: Visit) =>
  moves.reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)

const notJudged = (title: Statement, problem: Problem): Check => ({
  title,
  verdict: say`not judged`,
  sentence: problemStatement(problem),
  reasons: [],
})
