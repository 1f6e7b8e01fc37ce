import {
  type Evidence,
  evidence,
  fail,
  type Kelvin,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  type Statement,
  say,
} from '@chargewright/quantity'
import { evacuationSteps } from './evacuation-steps.ts'
import { FEWEST_READINGS, fitRise, MAX_RESOLUTION_PA, type RiseFit } from './fit-rise.ts'
import { badCriterion, HOLD_CRITERIA, type HoldCriterion } from './hold-criterion.ts'
import { type ColdestSpot, type HoldKind, holdVerdict } from './hold-verdict.ts'
import type { PressureLog } from './pressure-log.ts'
import { type RiseCause, riseCause } from './rise-cause.ts'
import { riseEvidence } from './rise-evidence.ts'
import { waterVapourPressure } from './water-vapour-pressure.ts'

export interface EvacuationOptions {
  /** Default: the published one. The maker's own goes before it. */
  readonly criterion?: HoldCriterion
  /** Step of the last digit of the gauge, 0 Pa to 1 kPa. */
  readonly resolution?: Quantity<'absolute pressure'>
  /** Coldest part of the system, −100 °C to 200 °C: a test above the vapour pressure of water there proves nothing. */
  readonly coldestSpot?: Kelvin
}

export interface EvacuationFinding {
  readonly kind: HoldKind
  readonly cause: RiseCause
  readonly sentence: Statement
  readonly reasons: readonly Evidence[]
  /** What to do now, in order. */
  readonly steps: readonly Statement[]
  /** Absent with fewer than eight readings. */
  readonly fit?: RiseFit
}

/**
 * Whether an evacuated, shut-off system holds its vacuum, and whether air or moisture makes it rise. A leak that passes
 * the criterion is still named.
 *
 * @param log from the moment of shutting off
 * @returns the finding; else the problem with criterion, resolution or coldest spot
 * @source default criterion: UFGS 15182; moisture by levelling: common practice
 */
export function judgeEvacuation(log: PressureLog, options: EvacuationOptions = {}): Result<EvacuationFinding, Problem> {
  const { criterion = HOLD_CRITERIA.specification, resolution, coldestSpot } = options
  const coldest = coldestSpot === undefined ? ok(undefined) : vapourAt(coldestSpot)
  if (!coldest.ok) return coldest
  const problem =
    badCriterion(criterion) ?? outOfRange('resolution of the gauge', resolution?.si ?? 0, 0, MAX_RESOLUTION_PA, 'Pa')
  if (problem) return fail(problem)
  const fit = fitRise(log, resolution?.si)
  const cause = fit.ok
    ? riseCause(fit.value, (criterion.limit.si - criterion.start.si) / criterion.hold.si)
    : 'cannot-tell'
  const { kind, sentence, reason } = holdVerdict(log, criterion, coldest.value, cause === 'falling')
  return ok({
    kind,
    cause,
    sentence,
    reasons: [reason, fit.ok ? riseEvidence(fit.value, cause, log, criterion) : TOO_FEW],
    steps: evacuationSteps(kind, cause, fit.ok && isDoomed(fit.value, log, criterion), criterion),
    ...(fit.ok ? { fit: fit.value } : {}),
  })
}

/** Even the least leak of the interval goes above the limit in time. */
function isDoomed({ leak }: RiseFit, log: PressureLog, { limit, hold }: HoldCriterion): boolean {
  return log[0]!.pressure_Pa + leak.low * hold.si > limit.si
}

function vapourAt(coldestSpot: Kelvin): Result<ColdestSpot, Problem> {
  const vapour = waterVapourPressure(coldestSpot)
  if (!vapour.ok) return vapour
  return ok({
    temperature: quantity('temperature', coldestSpot),
    vapour: quantity('absolute pressure', vapour.value),
  })
}

const TOO_FEW = evidence(say`Fewer than ${FEWEST_READINGS} readings: a leak cannot be told from moisture`)
