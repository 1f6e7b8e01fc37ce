import { type Evidence, say, type Tell } from '@chargewright/quantity'
import type { Citations } from './citations.ts'

/** One statement of an evidence tree, at its depth below the first. */
export interface EvidenceLine {
  readonly depth: number
  readonly text: string
  /** Number of its source. */
  readonly source?: number
}

/** Writes trees of evidence as lines; a branch that was opened before is named again and not opened again. */
export function evidenceLines(trees: readonly Evidence[], tell: Tell, { cite }: Citations): readonly EvidenceLine[] {
  const opened = new Set<Evidence>()
  const lines = (evidence: Evidence, depth: number): readonly EvidenceLine[] => {
    const again = evidence.from.length > 0 && opened.has(evidence)
    opened.add(evidence)
    const text = tell(again ? say`${evidence.statement} (as above)` : evidence.statement)
    const line = evidence.source === undefined ? { depth, text } : { depth, text, source: cite(evidence.source) }
    return [line, ...(again ? [] : evidence.from.flatMap((part) => lines(part, depth + 1)))]
  }
  return trees.flatMap((tree) => lines(tree, 0))
}
