import type { NextEntry } from '@chargewright/charging'
import { figureKind, observationKind, readingKind } from '@chargewright/visit'
import { FACT_LABELS } from '../session/fact-label.ts'

/** The label of the field in which an entry is made. */
export function entryLabel(entry: NextEntry['entry']): string {
  switch (entry.kind) {
    case 'reading':
      return readingKind(entry.what).label
    case 'observation':
      return observationKind(entry.what).label
    case 'figure':
      return figureKind(entry.what).label
    case 'fact':
      return FACT_LABELS[entry.what]
  }
}
