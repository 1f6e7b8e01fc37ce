import type { Case, DeviceKind } from '../../population/case.ts'
import { drawCases } from '../../population/draw-cases.ts'
import type { Family } from '../../population/family.ts'
import { informed, judges } from '../judges/judges.ts'
import type { Grounds } from '../judges/our-diagnosis.ts'
import type { Scored } from '../metrics/scored.ts'
import type { Judge, Seen, Verdict } from '../verdict.ts'
import { answer } from './answer.ts'
import { type Asked, asking } from './asking.ts'

/** So many cases of one kind, to be drawn and judged by all. */
export interface ScoreJob {
  readonly kind: DeviceKind
  readonly half: Case['half']
  readonly count: number
  readonly seed: number
  readonly family?: Family
  readonly grounds: Grounds
  /** Whether ours is asked once more with more to know: takes twice as long again. */
  readonly informed: boolean
}

/** What every judge said of one case, by the judge's name. */
export interface ScoredByAll {
  readonly case: Scored['case']
  readonly verdicts: Readonly<Record<string, Verdict>>
  /** What ours says where it is told more. */
  readonly informed: Readonly<Record<string, Verdict>>
  /** Ours where the readings were handed out one by one as asked for; of one case in four, for it takes long. */
  readonly asked?: Asked
}

const ASKED_EVERY = 4

answer((job: ScoreJob): readonly ScoredByAll[] => {
  const [all, told] = [judges(job.grounds), job.informed ? informed(job.grounds) : []]
  const asEach = (by: readonly Judge[], seen: Seen) =>
    Object.fromEntries(by.map(({ name, judge }) => [name, judge(seen)]))
  return [...drawCases(job)].map(({ half, truth, ...seen }, i) => {
    return {
      case: { half, plate: seen.plate, truth },
      verdicts: asEach(all, seen),
      informed: asEach(told, seen),
      ...(i % ASKED_EVERY === 0 ? { asked: asking(all.at(-1)!, seen) } : {}),
    }
  })
})
