import type { NextEntry } from '@chargewright/charging'
import { FIGURE_IDS, figureKind, observationKind, readingKind } from '@chargewright/visit'

/** What can be entered, in words. */
export function entryName(entry: NextEntry['entry']): string {
  switch (entry.kind) {
    case 'reading':
      return readingKind(entry.what).label
    case 'observation':
      return observationKind(entry.what).label
    case 'figure':
      return figureKind(entry.what).label
    case 'fact':
      return factName(entry.what)
  }
}

/** A field of the description of a system, in words. */
export function factName(name: string): string {
  const figure = FIGURE_IDS.find((id) => id === name)
  return figure ? figureKind(figure).label : (NAMES[name] ?? name)
}

const NAMES: Readonly<Record<string, string>> = {
  name: 'Name',
  refrigerant: 'Refrigerant',
  meteringDevice: 'Metering device',
  application: 'Application',
  receiver: 'Receiver',
  sightGlass: 'Sight glass',
  accumulator: 'Accumulator',
  makersChart: 'Maker’s chart',
}
