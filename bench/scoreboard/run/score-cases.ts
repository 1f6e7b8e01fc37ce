import type { Case, DeviceKind } from '../../population/case.ts'
import { drawCases } from '../../population/draw-cases.ts'
import type { Family } from '../../population/family.ts'
import { judges } from '../judges/judges.ts'
import type { Grounds } from '../judges/our-diagnosis.ts'
import type { Scored } from '../metrics/scored.ts'
import type { Verdict } from '../verdict.ts'
import { answer } from './answer.ts'

/** So many cases of one kind, to be drawn and judged by all. */
export interface ScoreJob {
  readonly kind: DeviceKind
  readonly half: Case['half']
  readonly count: number
  readonly seed: number
  readonly family?: Family
  readonly grounds: Grounds
}

/** What every judge said of one case, by the judge's name. */
export interface ScoredByAll {
  readonly case: Scored['case']
  readonly verdicts: Readonly<Record<string, Verdict>>
}

answer((job: ScoreJob): readonly ScoredByAll[] => {
  const all = judges(job.grounds)
  return [...drawCases(job)].map(({ half, plate, readings, truth }) => ({
    case: { half, plate, truth },
    verdicts: Object.fromEntries(all.map(({ name, judge }) => [name, judge({ plate, readings })])),
  }))
})
