import {
  type ChronicLeak,
  type Clock,
  type Co2Equivalent,
  type Coverage,
  chronicLeak,
  co2Equivalent,
  EU_2024_573,
  type EuLeakCheck,
  euLeakCheck,
  judgeLeakRate,
  type LeakRate,
  type LeakVerdict,
  leakRateAfter,
  leakRepairCoverage,
  repairClocks,
} from '@chargewright/ledger'
import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { missing } from '../failure.ts'
import { withNearNames } from '../near-names.ts'
import { type LeakHistoryFile, readLeakHistory } from './leak-history-file.ts'

const METHODS = ['annualizing', 'rolling'] as const

/** What one law asks of an appliance. */
export interface LawAnswer {
  readonly coverage: Coverage
  readonly rates: readonly {
    readonly method: LeakRate['method']
    readonly judged: Result<{ readonly rate: LeakRate; readonly verdict: LeakVerdict }, Problem>
  }[]
  /** Run once a rate is over its threshold, or where the file says when it was. */
  readonly clocks: readonly Clock[]
  readonly chronic: ChronicLeak
}

export interface LeakRateAnswer {
  readonly refrigerant: string
  readonly on: string
  readonly laws: readonly LawAnswer[]
  /** Of the full charge. */
  readonly co2: Result<Co2Equivalent, Problem>
  readonly euCheck: EuLeakCheck
}

/** @param data a leak history, as its JSON was parsed */
export function leakRate(data: unknown): Result<LeakRateAnswer, readonly Problem[]> {
  const file = readLeakHistory(data)
  if (!file.ok) return file
  const history = file.value
  const on = history.on ?? lastDay(history)
  if (on === undefined) return fail([missing('additions', 'at least one addition')])
  const coverage = withNearNames(leakRepairCoverage(history, on))
  if (!coverage.ok) return fail([coverage.error])
  const laws: LawAnswer[] = []
  for (const each of coverage.value.filter(({ verdict }) => verdict !== 'does-not-apply')) {
    const law = underLaw(each, history, on)
    if (!law.ok) return fail([law.error])
    laws.push(law.value)
  }
  const euCheck = euLeakCheck({ ...history, charge: history.fullCharge })
  if (!euCheck.ok) return fail([euCheck.error])
  const co2 = co2Equivalent(history.refrigerant, history.fullCharge, EU_2024_573.gwpEdition.value)
  return ok({ refrigerant: history.refrigerant, on, laws, co2, euCheck: euCheck.value })
}

const lastDay = ({ additions }: LeakHistoryFile) =>
  additions
    .map(({ on }) => on)
    .toSorted()
    .at(-1)

function underLaw(coverage: Coverage, history: LeakHistoryFile, on: string): Result<LawAnswer, Problem> {
  const { law } = coverage
  const { use, fullCharge, additions, followUpPassedOn } = history
  const rates = METHODS.map((method) => {
    const rate = leakRateAfter(
      { fullCharge, additions, on, ...(followUpPassedOn ? { followUpPassedOn } : {}) },
      method,
      law,
    )
    return { method, judged: rate.ok ? ok({ rate: rate.value, verdict: judgeLeakRate(rate.value, law, use) }) : rate }
  })
  const refused = rates.find(({ judged }) => !judged.ok && judged.error.kind !== 'missing')
  if (refused && !refused.judged.ok) return refused.judged
  const chronic = chronicLeak(history, Number(on.slice(0, 4)), law)
  if (!chronic.ok) return chronic
  const over = rates.some(({ judged }) => judged.ok && judged.value.verdict.over)
  const exceededOn = history.since?.exceededOn ?? (over ? on : undefined)
  const clocks =
    exceededOn === undefined ? ok([]) : repairClocks({ ...history.since, use, fullCharge, exceededOn }, law)
  return clocks.ok ? ok({ coverage, rates, clocks: clocks.value, chronic: chronic.value }) : clocks
}
