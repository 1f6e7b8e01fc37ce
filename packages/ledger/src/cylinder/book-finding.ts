import type { Statement } from '@chargewright/quantity'

/**
 * What the book objects to. `stop`: it must not be done, or must be undone. `check`: the weights do not agree, and
 * someone has to weigh again or remember what happened.
 */
export const BOOK_FINDINGS = {
  overfilled: { severity: 'stop', source: 'AHRI Guideline K, as quoted in the trade press; 49 CFR 173.304a, recalled' },
  'fill-limit-unknown': { severity: 'check', source: 'common practice' },
  'refilled-disposable': { severity: 'stop', source: '49 CFR 178.65, recalled' },
  mixed: { severity: 'stop', source: 'common practice' },
  'recovered-into-new': { severity: 'stop', source: 'common practice' },
  'recovered-to-other-system': { severity: 'check', source: '40 CFR 82.152, recycle' },
  'below-tare': { severity: 'check', source: 'balance of the cylinder' },
  'weight-changed-between': { severity: 'check', source: 'balance of the cylinder' },
  'wrong-direction': { severity: 'check', source: 'balance of the cylinder' },
  'disagrees-with-visit': { severity: 'check', source: 'balance of the cylinder' },
} as const

export type BookFindingKind = keyof typeof BOOK_FINDINGS

export interface BookFinding {
  readonly kind: BookFindingKind
  readonly severity: 'stop' | 'check'
  readonly cylinder: string
  /** Absent: the cylinder as it came into the book. */
  readonly movementId?: string
  readonly sentence: Statement
  readonly source: string
}

export function bookFinding(
  kind: BookFindingKind,
  cylinder: string,
  movementId: string | undefined,
  sentence: Statement,
): BookFinding {
  const place = movementId === undefined ? { cylinder } : { cylinder, movementId }
  return { kind, ...BOOK_FINDINGS[kind], ...place, sentence }
}
