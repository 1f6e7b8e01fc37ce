import { say } from '@chargewright/quantity'
import type { Condition, Finding } from '../assessment.ts'

/**
 * A step towards a target that is in doubt: with it the method cannot end in this weather, which is told, with what would
 * end it, before the first of the refrigerant goes in.
 */
export function withoutEnd(finding: Finding, conditions: readonly Condition[]): Finding {
  const doubt = conditions.find(({ id, state }) => id === 'target' && state === 'doubtful')
  if (!doubt || !finding.dose) return finding
  return { ...finding, reasons: [...finding.reasons, doubt.evidence], steps: [WHAT_WOULD, ...finding.steps] }
}

const WHAT_WOULD = say`Know beforehand that weighed steps cannot end in this weather: warm the return air or wait for other weather before the last one; or recover all of it now, evacuate and weigh in`
