import { refrigerantFacts } from '@chargewright/refrigerant'

/** Whether the refrigerant burns by its safety class (A2L, A2, A3 and their toxic kin). An unknown class is treated as one that does. */
export function isFlammable(name: string): boolean {
  const safetyClass = refrigerantFacts(name)?.safetyClass?.value
  return safetyClass === undefined || !safetyClass.endsWith('1')
}
