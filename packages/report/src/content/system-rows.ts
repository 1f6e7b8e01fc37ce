import type { UnitPreference } from '@chargewright/quantity'
import { APPLICATIONS, FIGURE_IDS, figureKind, METERING_DEVICES, type System } from '@chargewright/visit'
import { type QuantityCell, quantityCell } from './quantity-cell.ts'

/** One thing known of the system. */
export interface SystemRow {
  readonly label: string
  /** As typed or chosen. */
  readonly value: string
  /** Of a figure that could be read. */
  readonly quantity?: QuantityCell
}

/** Everything that was said of the system and still stands, in the order of the nameplate. */
export function systemRows({ facts, figures }: System, preference: UnitPreference): readonly SystemRow[] {
  const yesNo = (label: string, fact: boolean | undefined) =>
    fact === undefined ? [] : [{ label, value: fact ? 'yes' : 'no' }]
  const named = (label: string, value: string | undefined) => (value === undefined ? [] : [{ label, value }])
  return [
    ...named('Refrigerant', facts.refrigerant),
    ...named('Metering device', facts.meteringDevice && METERING_DEVICES[facts.meteringDevice]),
    ...named('Application', facts.application && APPLICATIONS[facts.application]),
    ...yesNo('Receiver', facts.receiver),
    ...yesNo('Sight glass', facts.sightGlass),
    ...yesNo('Accumulator', facts.accumulator),
    ...(facts.accessories ?? []).map(({ name, volume, liquidPercent }) => ({
      label: name,
      value: `${volume}, ${liquidPercent} % of it liquid`,
    })),
    ...named('Rating of the compressor', facts.compressorRating && 'the maker’s coefficients, entered'),
    ...named('Maker’s chart', facts.makersChart && `entered, over ${facts.makersChart.indoor.replace('-', ' ')}`),
    ...FIGURE_IDS.flatMap((id) => {
      const figure = figures[id]
      return figure
        ? [{ label: figureKind(id).label, value: figure.typed, quantity: quantityCell(figure.quantity, preference) }]
        : []
    }),
  ]
}
