import { format, type Quantity, render, type Statement, type UnitPreference } from '@chargewright/quantity'

/** A sentence in the reader's units, in which no line ends between a number, its ± and its unit. */
export function inWords(statement: Statement, units: UnitPreference): string {
  return render({ ...statement, values: statement.values.map((value) => unbroken(value, units)) }, units)
}

/** A quantity in the reader's units, unbroken, with its uncertainty if asked. */
export function quantityInWords(quantity: Quantity, units: UnitPreference, showUncertainty = false): string {
  return format(quantity, units, showUncertainty).replaceAll(' ', NO_BREAK)
}

const NO_BREAK = '\u00a0'

function unbroken(value: Statement['values'][number], units: UnitPreference): string | number {
  if (typeof value !== 'object') return value
  return 'template' in value ? inWords(value, units) : quantityInWords(value, units, value.u !== undefined)
}
