import { findRefrigerant, type Refrigerant, refrigerantNames } from '../src/index.ts'

/** A refrigerant that the test takes for granted. */
export function computed(name: string): Refrigerant {
  const found = findRefrigerant(name)
  if (!found.ok) throw new Error(`${name} cannot be computed`)
  return found.value
}

export const everyRefrigerant = (): readonly Refrigerant[] => refrigerantNames().map(computed)
