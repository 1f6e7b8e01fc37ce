import type { Evidence } from '@chargewright/charging'
import { render, type UnitPreference } from '@chargewright/quantity'
import { wrap } from './wrap.ts'

const STEP = 2
/** Deeper branches are not indented further, so that a line keeps room for words. */
const DEEPEST_INDENT = 16

/**
 * A statement and, indented under it, what it rests on, down to what was typed in. The source of a limit, a formula or
 * an instrument stands behind its statement in brackets.
 */
export function evidenceTree(
  evidence: Evidence,
  units: UnitPreference,
  width: number,
  indent: number,
): readonly string[] {
  const space = ' '.repeat(Math.min(indent, DEEPEST_INDENT))
  const source = evidence.source === undefined ? '' : ` [${evidence.source}]`
  return [
    ...wrap(`${render(evidence.statement, units)}${source}`, width, space, `${space}  `),
    ...evidence.from.flatMap((part) => evidenceTree(part, units, width, indent + STEP)),
  ]
}
