import { refrigerantFacts } from '@chargewright/refrigerant'

/**
 * Whether a refrigerant burns, by its safety class: 2L, 2 and 3 do. `unknown` where no class is on file; the cylinder's
 * label then has to tell.
 *
 * @source ASHRAE 34 / ISO 817, as given with the refrigerant's facts
 */
export function burns(refrigerant: string): 'yes' | 'no' | 'unknown' {
  const facts = refrigerantFacts(refrigerant)
  const safetyClass = facts.ok ? facts.value.safetyClass?.value : undefined
  if (safetyClass === undefined) return 'unknown'
  return safetyClass.endsWith('1') ? 'no' : 'yes'
}
