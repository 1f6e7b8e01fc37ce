import { factLabel, figureKind, observationKind, readingKind } from '@chargewright/visit'
import type { NextEntry } from './assessment.ts'

/** What the entry that would tell more is called, where it is entered and where it is asked for. */
export function entryLabel(entry: NextEntry['entry']): string {
  switch (entry.kind) {
    case 'reading':
      return readingKind(entry.what).label
    case 'observation':
      return observationKind(entry.what).label
    case 'figure':
      return figureKind(entry.what).label
    case 'fact':
      return factLabel(entry.what)
  }
}
