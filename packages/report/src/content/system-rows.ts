import { designation } from '@chargewright/ledger'
import { say, type Tell, type UnitPreference, verbatim } from '@chargewright/quantity'
import {
  APPLICATIONS,
  type FactName,
  FIGURE_IDS,
  factLabel,
  figureKind,
  METERING_DEVICES,
  type System,
} from '@chargewright/visit'
import { type QuantityCell, quantityCell } from './quantity-cell.ts'

/** One thing known of the system. */
export interface SystemRow {
  /** The same in every language. */
  readonly what: FactName | 'learntFrom'
  readonly label: string
  /** As typed or chosen; of the refrigerant, its designation. */
  readonly value: string
  /** Of a refrigerant that was typed otherwise. */
  readonly typed?: string
  /** Of a figure that could be read. */
  readonly quantity?: QuantityCell
}

/** Everything that was said of the system and still stands, in the order of the nameplate. */
export function systemRows({ facts, figures }: System, preference: UnitPreference, tell: Tell): readonly SystemRow[] {
  const row = (what: FactName, value: string | undefined, label = tell(say`${factLabel(what)}`)) =>
    value === undefined ? [] : [{ what, label, value }]
  const chosen = (name: string | undefined) => name && tell(say`${name}`)
  const yesNo = (fact: boolean | undefined) => (fact === undefined ? undefined : tell(fact ? say`yes` : say`no`))
  const { accessories = [], compressorRating, makersChart } = facts
  return [
    ...refrigerantRow(facts.refrigerant, tell),
    ...row('meteringDevice', chosen(facts.meteringDevice && METERING_DEVICES[facts.meteringDevice])),
    ...row('application', chosen(facts.application && APPLICATIONS[facts.application])),
    ...row('receiver', yesNo(facts.receiver)),
    ...row('sightGlass', yesNo(facts.sightGlass)),
    ...row('accumulator', yesNo(facts.accumulator)),
    ...accessories.flatMap(({ name, volume, liquidPercent }) =>
      row('accessories', tell(say`${verbatim(volume)}, ${liquidPercent} % of it liquid`), name),
    ),
    ...row('compressorRating', compressorRating && tell(say`the maker’s coefficients, entered`)),
    ...row('makersChart', makersChart && tell(CHARTS[makersChart.indoor])),
    ...FIGURE_IDS.flatMap((id) => {
      const figure = figures[id]
      if (!figure) return []
      const label = tell(say`${figureKind(id).label}`)
      return [{ what: id, label, value: figure.typed, quantity: quantityCell(figure.quantity, preference) }]
    }),
  ]
}

function refrigerantRow(typed: string | undefined, tell: Tell): readonly SystemRow[] {
  if (typed === undefined) return []
  const [what, value] = ['refrigerant', designation(typed)] as const
  return [{ what, label: tell(say`${factLabel(what)}`), value, ...(value === typed ? {} : { typed }) }]
}

const CHARTS = {
  'wet-bulb': say`entered, over wet bulb`,
  'dry-bulb': say`entered, over dry bulb`,
} as const
