import { say } from '@chargewright/quantity'
import type { Condition, Finding, LookAlike } from '../assessment.ts'
import { equalised } from '../conditions/equalised.ts'
import { systemEmpty } from '../conditions/system-empty.ts'
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
  const conditions: Condition[] = [...equalised(visit), systemEmpty(asked)]
  const rule = (finding: Finding, lookAlikes: readonly LookAlike[] = []): Ruling => ({
    conditions,
    lookAlikes,
    finding,
    problems,
    ...(total ? { target: total } : {}),
  })
  const lost = lostCharge(asked)
  if (lost) return rule(leaveTheCharge(lost.evidence, lost), [lost])
  const stopped = gate(visit, conditions, [])
  if (stopped) return rule(stopped)
  if (!total) return rule(missingEntries([nextFigure('nameplateCharge', say`the charge to weigh in starts from it`)]))
  return rule(weighed(asked, total))
}
