import { SHIPPED } from './judges/our-diagnosis.ts'
import { type Figures, figures } from './metrics/figures.ts'
import { type Quantile, quantile } from './metrics/quantile.ts'
import { type ReliabilityBin, reliability } from './metrics/reliability.ts'
import { type RiskAtCoverage, riskCoverage } from './metrics/risk-coverage.ts'
import { isAnswered, type Scored } from './metrics/scored.ts'
import type { Progress } from './run/in-parallel.ts'
import { judged, scoreJobs } from './run/judged.ts'
import type { ScoredByAll } from './run/score-cases.ts'

/** All judges on the same cases. */
export interface Board {
  readonly seed: number
  readonly judges: readonly JudgeOnBoard[]
  readonly asked: WhenAsking
  /** Ours where it is told more, single faults and sound systems of the unseen half. */
  readonly informed: readonly { readonly name: string; readonly figures: Figures }[]
}

export interface JudgeOnBoard {
  readonly name: string
  /** Single faults and sound systems of the unseen half: what the aims are about. */
  readonly main: Figures
  readonly groups: readonly { readonly title: string; readonly figures: Figures }[]
  readonly curve: readonly RiskAtCoverage[]
  readonly reliability: readonly ReliabilityBin[]
}

/** Ours with readings handed out one by one, on request: how many it takes, and how the answers then are. */
export interface WhenAsking {
  /** Values in hand when it answered, weather included. */
  readonly readings: Quantile | undefined
  readonly figures: Figures
}

/** @param unseen cases of the unseen half per device; the seen half is drawn a quarter as large, to compare */
export async function board(unseen: number, seed: number, progress: Progress): Promise<Board> {
  const jobs = [
    ...scoreJobs({ half: 'unseen', grounds: SHIPPED, informed: true }, unseen, seed),
    ...scoreJobs({ half: 'seen', grounds: SHIPPED, informed: false }, Math.ceil(unseen / 4), seed),
  ]
  const all = await judged(jobs, progress)
  return {
    seed,
    judges: Object.keys(all[0]!.verdicts).map((name) => onBoard(name, all)),
    asked: whenAsking(all),
    informed: whenTold(all),
  }
}

function whenTold(all: readonly ScoredByAll[]): Board['informed'] {
  const single = all.filter(({ case: { half, truth } }) => half === 'unseen' && truth.troubles.length < 2)
  return Object.keys(single[0]!.informed).map((name) => ({
    name,
    figures: figures(single.map((each) => ({ case: each.case, verdict: each.informed[name]! }))),
  }))
}

function onBoard(name: string, all: readonly ScoredByAll[]): JudgeOnBoard {
  const scored: readonly Scored[] = all.map((each) => ({ case: each.case, verdict: each.verdicts[name]! }))
  const unseen = scored.filter((s) => s.case.half === 'unseen')
  const single = unseen.filter(isSingle)
  const of = <K extends string>(key: (s: Scored) => K) =>
    [...new Set(single.map(key))].toSorted().map((title) => ({
      title,
      figures: figures(single.filter((s) => key(s) === title)),
    }))
  return {
    name,
    main: figures(single),
    groups: [
      ...of((s) => s.case.plate.device),
      ...of((s) => s.case.plate.refrigerant),
      ...of((s) => s.case.truth.troubles[0]?.kind ?? 'sound'),
      ...of(chargeBand).filter(({ title }) => title !== RIGHTLY_CHARGED),
      { title: 'two faults', figures: figures(unseen.filter((s) => !isSingle(s))) },
      { title: 'seen half', figures: figures(scored.filter((s) => s.case.half === 'seen' && isSingle(s))) },
    ],
    curve: thinned(riskCoverage(single)),
    reliability: reliability(single),
  }
}

function whenAsking(all: readonly ScoredByAll[]): WhenAsking {
  const asked = all.flatMap((each) => {
    const one = each.asked
    return one && each.case.half === 'unseen' ? [{ case: each.case, verdict: one.verdict, readings: one.readings }] : []
  })
  const single = asked.filter(isSingle)
  return {
    readings: quantile(
      single.filter(isAnswered).map(({ readings }) => readings),
      0.5,
    ),
    figures: figures(single),
  }
}

const RIGHTLY_CHARGED = 'charge off by less than 10 %'

/** Small errors are where charges are missed: how small says more than how many. */
function chargeBand({ case: { truth } }: Scored): string {
  const off = Math.abs(truth.chargeError)
  if (off < 0.1) return RIGHTLY_CHARGED
  return `charge off by ${off < 0.15 ? '10 to 15 %' : off < 0.25 ? '15 to 25 %' : 'more than 25 %'}`
}

const isSingle = ({ case: { truth } }: Scored): boolean => truth.troubles.length < 2

/** A curve that the file can hold: two hundred points, and the last. */
const thinned = (curve: readonly RiskAtCoverage[]): readonly RiskAtCoverage[] =>
  curve.filter((_, i) => i === curve.length - 1 || i % Math.ceil(curve.length / 200) === 0)
