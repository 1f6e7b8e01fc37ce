import { format, type Quantity, render, type Statement, translated, type UnitPreference } from '@chargewright/quantity'
import { t } from '../words/t.ts'

/** A sentence in the reader's language and units, in which no line ends between a number, its ± and its unit. */
export function inWords(statement: Statement, units: UnitPreference): string {
  return unbroken(translated(statement, t), units)
}

/** A quantity in the reader's units, with its uncertainty if asked; unbroken but within a long unit, as CFM per ton. */
export function quantityInWords(quantity: Quantity, units: UnitPreference, showUncertainty = false): string {
  return format(quantity, units, showUncertainty, t)
    .replaceAll(' ', NO_BREAK)
    .replace(/\u00a0(per|por)\u00a0/, ` $1${NO_BREAK}`)
}

const NO_BREAK = '\u00a0'

function unbroken({ template, values }: Statement, units: UnitPreference): string {
  const parts = values.map((value) => {
    if (typeof value !== 'object' || 'verbatim' in value) return value
    return 'template' in value ? unbroken(value, units) : quantityInWords(value, units, value.u !== undefined)
  })
  return render({ template, values: parts }, units)
}
