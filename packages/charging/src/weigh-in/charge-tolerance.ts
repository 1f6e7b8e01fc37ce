import { type Quantity, quantity } from '@chargewright/quantity'
import { burns } from '../flammable.ts'
import {
  BURNING_TOLERANCE_SHARE,
  CHARGE_TOLERANCE_SHARE,
  CRITICAL_TOLERANCE_SHARE,
  LIMITS,
  type Limit,
} from '../limit.ts'
import type { Case } from '../ruling.ts'

/**
 * How far off a weighed charge still counts as right. Where it is critical: a quarter ounce, of a tiny charge a
 * twentieth, of one that burns a fiftieth. Else: half an ounce, of a large charge a hundredth.
 */
export function chargeTolerance({ visit, refrigerant }: Case, total: Quantity<'mass'>): Limit<'mass'> {
  if (visit.system.facts.meteringDevice === 'capillary') {
    const { quantity: most, source } = LIMITS.criticalChargeTolerance
    const [share, why] = burns(refrigerant.name) === 'yes' ? OF_WHAT_BURNS : OF_A_TINY_CHARGE
    const least = quantity('mass', share * total.si)
    return least.si < most.si ? { quantity: least, source: why } : { quantity: most, source }
  }
  const { quantity: least, source } = LIMITS.chargeTolerance
  return { quantity: quantity('mass', Math.max(least.si, CHARGE_TOLERANCE_SHARE * total.si)), source }
}

const OF_WHAT_BURNS = [BURNING_TOLERANCE_SHARE, 'own choice: a fiftieth of a charge that burns'] as const
const OF_A_TINY_CHARGE = [CRITICAL_TOLERANCE_SHARE, 'own choice: a twentieth of a tiny charge'] as const
