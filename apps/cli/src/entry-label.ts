import type { NextEntry } from '@chargewright/charging'
import { figureKind, observationKind, readingKind } from '@chargewright/visit'

const FACTS = {
  refrigerant: 'Refrigerant',
  meteringDevice: 'Metering device',
  application: 'Application',
  makersChart: "Maker's chart",
} as const

/** What an entry is called. */
export function entryLabel(entry: NextEntry['entry']): string {
  switch (entry.kind) {
    case 'reading':
      return readingKind(entry.what).label
    case 'observation':
      return observationKind(entry.what).label
    case 'figure':
      return figureKind(entry.what).label
    case 'fact':
      return FACTS[entry.what]
  }
}
