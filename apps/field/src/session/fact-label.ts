import { figureKind, type SystemStatement } from '@chargewright/visit'

/** Labels of the facts that are chosen or named; those that are figures carry their own. */
export const FACT_LABELS = {
  name: 'Name of the system',
  refrigerant: 'Refrigerant',
  meteringDevice: 'Metering device',
  application: 'Application',
  receiver: 'Receiver',
  sightGlass: 'Sight glass',
  accumulator: 'Accumulator',
  liquidLineTube: 'Liquid-line tube',
  makersChart: 'Maker’s chart',
} as const

export type FactName = keyof SystemStatement

export function factLabel(name: FactName): string {
  return name in FACT_LABELS
    ? FACT_LABELS[name as keyof typeof FACT_LABELS]
    : figureKind(name as Exclude<FactName, keyof typeof FACT_LABELS>).label
}
