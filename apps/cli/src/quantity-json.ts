import {
  inEnglish,
  type Quantity,
  type Statement,
  sourceInWords,
  teller,
  type UnitPreference,
  type Words,
} from '@chargewright/quantity'
import { siKey } from './json-key.ts'

/** `{ superheat_K, superheat_standard_uncertainty_K }`; without the second where the value is taken as exact. */
export function inSi(name: string, q: Quantity, uncertainty = `${name}_standard_uncertainty`): object {
  const value = { [siKey(name, q.dimension)]: q.si }
  return q.u === undefined ? value : { ...value, [siKey(uncertainty, q.dimension)]: q.u }
}

/** A key with its value; nothing where there is none. */
export const optional = (key: string, value: unknown): object => (value === undefined ? {} : { [key]: value })

/** A caution with its sentence in the reader's units. */
export const cautionJson = (
  { id, statement, source }: { readonly id: string; readonly statement: Statement; readonly source: string },
  units: UnitPreference,
  words: Words = inEnglish,
): object => ({ id, text: teller(units, words)(statement), source: sourceInWords(source, words) })
