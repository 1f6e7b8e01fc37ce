import { type Quantity, quantity } from '@chargewright/quantity'
import { CHARGE_TOLERANCE_SHARE, LIMITS, type Limit } from '../limit.ts'
import type { Case } from '../ruling.ts'

/** How far off a weighed charge still counts as right: a quarter ounce where it is critical, else half an ounce or a hundredth. */
export function chargeTolerance({ visit }: Case, total: Quantity<'mass'>): Limit<'mass'> {
  if (visit.system.facts.meteringDevice === 'capillary') return LIMITS.criticalChargeTolerance
  const { quantity: least, source } = LIMITS.chargeTolerance
  return { quantity: quantity('mass', Math.max(least.si, CHARGE_TOLERANCE_SHARE * total.si)), source }
}
