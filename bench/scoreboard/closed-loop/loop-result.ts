import type { DeviceKind } from '../../population/case.ts'
import { type Quantile, quantile } from '../metrics/quantile.ts'
import { type Share, share } from '../metrics/share.ts'
import type { Run } from './policy.ts'

/** What is hidden in the plants of one closed loop; nothing: a sound system with the right charge. */
export const HIDDEN = ['wrong charge', 'another trouble', 'nothing'] as const
export type Hidden = (typeof HIDDEN)[number]

/** One plant after one policy, and how far its charge was off before and is now. */
export interface LoopRun {
  readonly policy: string
  readonly kind: DeviceKind
  readonly hidden: Hidden
  readonly before: number
  readonly after: number
  /** Undefined where the policy could not begin. */
  readonly run?: Run
  /** Whether the first stated interval held what was missing. */
  readonly held?: boolean
}

/** One policy over many plants. Not begun counts as left as it was. */
export interface LoopResult {
  readonly policy: string
  readonly kind: DeviceKind
  readonly hidden: Hidden
  readonly plants: number
  readonly notBegun: number
  readonly startRms: number
  readonly rms: number
  readonly within5: Share
  readonly within10: Share
  /** Plants on which it weighed anything at all. */
  readonly stepped: Share
  /** Of those: charge at the end within 5 % and 10 %. */
  readonly steppedWithin5: Share
  readonly steppedWithin10: Share
  readonly steps: Quantile | undefined
  readonly harmedPlants: Share
  readonly noVerdict: Share
  readonly coverage: Share
  readonly askedMean: number
}

export function loopResults(runs: readonly LoopRun[]): readonly LoopResult[] {
  const key = ({ policy, kind, hidden }: LoopRun) => `${hidden}|${kind}|${policy}`
  return [...new Set(runs.map(key))].map((group) => loopResult(runs.filter((run) => key(run) === group)))
}

export function loopResult(group: readonly LoopRun[]): LoopResult {
  const { policy, kind, hidden } = group[0]!
  const stepped = group.filter(({ run }) => (run?.steps ?? 0) > 0)
  const rate = (of: readonly LoopRun[], counts: (run: LoopRun) => boolean) => share(of.filter(counts).length, of.length)
  const within = (limit: number) => (each: LoopRun) => Math.abs(each.after) <= limit
  const stated = group.filter(({ held }) => held !== undefined)
  return {
    policy,
    kind,
    hidden,
    plants: group.length,
    notBegun: group.filter(({ run }) => !run).length,
    startRms: rms(group.map(({ before }) => before)),
    rms: rms(group.map(({ after }) => after)),
    within5: rate(group, within(0.05)),
    within10: rate(group, within(0.1)),
    stepped: rate(group, ({ run }) => (run?.steps ?? 0) > 0),
    steppedWithin5: rate(stepped, within(0.05)),
    steppedWithin10: rate(stepped, within(0.1)),
    steps: quantile(
      stepped.map(({ run }) => run!.steps),
      0.5,
    ),
    harmedPlants: rate(group, ({ run }) => (run?.harmful ?? 0) > 0),
    noVerdict: rate(group, ({ run }) => !run || run.ended === 'no verdict'),
    coverage: rate(stated, ({ held }) => held === true),
    askedMean: group.reduce((sum, { run }) => sum + (run?.asked ?? 0), 0) / group.length,
  }
}

const rms = (x: readonly number[]) => Math.sqrt(x.reduce((sum, value) => sum + value * value, 0) / x.length)
