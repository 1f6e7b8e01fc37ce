import type { Family } from '../population/family.ts'
import { DEVICES } from './devices.ts'
import { type Grounds, SHIPPED } from './judges/our-diagnosis.ts'
import { type Figures, figures } from './metrics/figures.ts'
import { inParallel, type Progress } from './run/in-parallel.ts'
import { judged, scoreJobs } from './run/judged.ts'
import type { RelearnJob, Relearnt } from './run/relearn.ts'

/** What becomes of our judge when the twin or the plants are other than it was made for. */
export interface Robustness {
  /** Sound visits per device that the calibration is learnt again from. */
  readonly visits: number
  readonly rows: readonly { readonly title: string; readonly kind: Kind; readonly figures: Figures }[]
}

type Kind = 'reference' | 'nominals' | 'structure'

interface Change {
  readonly kind: Kind
  readonly title: string
  readonly habits?: Grounds['habits']
  readonly family?: Family
}

const VISITS = 50
const { habits } = SHIPPED

const CHANGES: readonly Change[] = [
  { kind: 'reference', title: 'as shipped' },
  {
    kind: 'nominals',
    title: 'nominals wrong',
    habits: {
      ...habits,
      evaporating_K: { ...habits.evaporating_K, value: habits.evaporating_K.value - 2 },
      condensingApproach_K: { ...habits.condensingApproach_K, value: habits.condensingApproach_K.value + 3 },
      subcooling_K: habits.subcooling_K + 1.5,
      indoorFan: 1.4 * habits.indoorFan,
      outdoorFan: 1.4 * habits.outdoorFan,
    },
  },
  // Two laws that lie far apart in how much refrigerant they put into the coils.
  { kind: 'structure', title: 'void fraction always Zivi’s', family: { voidFraction: 'zivi' } },
  { kind: 'structure', title: 'void fraction always Hughmark’s', family: { voidFraction: 'hughmark' } },
  { kind: 'structure', title: 'device always homogeneous', family: { deviceLaw: 'homogeneous' } },
  { kind: 'structure', title: 'spread between units × 1.5', family: { spread: 1.5 } },
]

/** @param cases of the unseen half per device and row */
export async function robustness(
  kinds: readonly Kind[],
  cases: number,
  seed: number,
  progress: Progress,
): Promise<Robustness> {
  const changes = CHANGES.filter(({ kind }) => kind === 'reference' || kinds.includes(kind))
  const rows: Robustness['rows'][number][] = []
  for (const [i, change] of changes.entries()) {
    const before: Grounds = { ...SHIPPED, habits: change.habits ?? habits }
    const after = { ...before, calibration: await relearnt(change, before, seed) }
    for (const [k, grounds] of [before, after].entries()) {
      const jobs = scoreJobs(
        { half: 'unseen', grounds, informed: false, ...(change.family ? { family: change.family } : {}) },
        cases,
        seed,
      )
      const all = await judged(jobs, (share) => progress((i + (k + share) / 2) / changes.length))
      const ours = all
        .filter(({ case: { truth } }) => truth.troubles.length < 2)
        .map((each) => ({ case: each.case, verdict: Object.values(each.verdicts).at(-1)! }))
      rows.push({
        title: k === 0 ? change.title : `${change.title}, learnt again`,
        kind: change.kind,
        figures: figures(ours),
      })
    }
  }
  return { visits: VISITS, rows }
}

/** The shipped calibration after sound visits to systems of the seen half, each device by itself. */
async function relearnt({ family }: Change, grounds: Grounds, seed: number): Promise<Grounds['calibration']> {
  const jobs = DEVICES.map(
    (kind): RelearnJob => ({ kind, visits: VISITS, seed, grounds, ...(family ? { family } : {}) }),
  )
  const answers = await inParallel<RelearnJob, Relearnt>(`${import.meta.dirname}/run/relearn.ts`, jobs, () => {})
  return {
    ...grounds.calibration,
    devices: Object.fromEntries(answers) as unknown as Grounds['calibration']['devices'],
  }
}
