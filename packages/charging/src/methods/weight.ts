import { say } from '@chargewright/quantity'
import type { Condition, Finding, LookAlike } from '../assessment.ts'
import { equalised } from '../conditions/equalised.ts'
import { systemEmpty } from '../conditions/system-empty.ts'
import { tightAndDry } from '../conditions/tight-and-dry.ts'
import { gate, missingEntries, nextFigure } from '../gate.ts'
import { lostCharge } from '../look-alikes/lost-charge.ts'
import { leaveTheCharge } from '../look-alikes/other-cause.ts'
import type { Case, Ruling } from '../ruling.ts'
import { amount } from '../weigh-in/amount.ts'
import { chargeTolerance } from '../weigh-in/charge-tolerance.ts'
import { weighed } from '../weigh-in/weighed.ts'

/**
 * Every system that is empty, and the only exact way for a critical charge: the nameplate charge, plus what lines
 * beyond the included length, a larger drier and head-pressure control hold, weighed into the evacuated system.
 */
export function byWeight(asked: Case): Ruling {
  const { visit } = asked
  const { total: sum, problems } = amount(asked)
  const total = sum && { ...sum, tolerance: chargeTolerance(asked, sum.quantity) }
  const conditions: Condition[] = [...equalised(visit), systemEmpty(asked), ...tightAndDry(visit)]
  const rule = (finding: Finding, lookAlikes: readonly LookAlike[] = []): Ruling => ({
    conditions,
    lookAlikes,
    finding,
    problems,
    ...(total ? { target: total } : {}),
  })
  const lost = lostCharge(asked)
  if (lost) return rule(leaveTheCharge(lost.evidence, lost), [lost])
  const found = total && weighed(asked, total)
  // Too much is taken out again before anything is started.
  if (found?.kind === 'recover' && conditions.every(({ id, state }) => id !== 'system-empty' || state === 'met')) {
    return rule(found)
  }
  const stopped = gate(visit, conditions, [])
  if (stopped) return rule(stopped)
  if (!found) return rule(missingEntries([nextFigure('nameplateCharge', say`the charge to weigh in starts from it`)]))
  return rule(found)
}
