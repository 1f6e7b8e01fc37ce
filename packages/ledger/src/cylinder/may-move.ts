import { COVERAGE, fail, ok, type Problem, quantity, type Result } from '@chargewright/quantity'
import { balanceBook, type CylinderBook } from './balance-book.ts'
import type { BookFinding } from './book-finding.ts'
import type { Mass } from './cylinder.ts'
import type { CylinderAccount, Step } from './cylinder-account.ts'
import type { Movement } from './movement.ts'

/** Why a planned movement is refused. */
export interface Refusal {
  readonly findings: readonly BookFinding[]
  readonly problems: readonly Problem[]
}

/**
 * Asks before refrigerant moves: refuses what would overfill a cylinder, mix refrigerants or fill one that may not be
 * filled. What only needs checking is not refused; it shows as a finding once the movement is written down.
 *
 * @returns the step as it would be taken up
 */
export function mayMove(book: CylinderBook, planned: Movement): Result<Step, Refusal> {
  const asItStands = balanceBook(book)
  const asPlanned = balanceBook({ ...book, entries: [...book.entries, { kind: 'moved', movement: planned }] })
  const known = new Set(asItStands.problems.map(({ field }) => field))
  const problems = asPlanned.problems.filter(({ field }) => !known.has(field))
  const findings = asPlanned.findings.filter(
    ({ severity, movementId }) => severity === 'stop' && movementId === planned.id,
  )
  const step = asPlanned.steps.at(-1)
  return problems.length === 0 && findings.length === 0 && step ? ok(step) : fail({ findings, problems })
}

/** What still fits into a cylinder, the uncertainty of its weighing taken off; nothing when it is full or over. */
export function roomLeft({ content, fillLimit }: CylinderAccount): Result<Mass, Problem> {
  if (!fillLimit.ok) return fillLimit
  const room = fillLimit.value.mass.si - content.si - COVERAGE * (content.u ?? 0)
  return ok(quantity('mass', Math.max(0, room)))
}
