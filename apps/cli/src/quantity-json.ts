import type { Quantity } from '@chargewright/quantity'
import { siKey } from './json-key.ts'

/** `{ superheat_K, superheat_standard_uncertainty_K }`; without the second where the value is taken as exact. */
export function inSi(name: string, q: Quantity, uncertainty = `${name}_standard_uncertainty`): object {
  const value = { [siKey(name, q.dimension)]: q.si }
  return q.u === undefined ? value : { ...value, [siKey(uncertainty, q.dimension)]: q.u }
}

/** A key with its value; nothing where there is none. */
export const optional = (key: string, value: unknown): object => (value === undefined ? {} : { [key]: value })
