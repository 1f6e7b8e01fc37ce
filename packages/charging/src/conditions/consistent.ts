import { add, quantity, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'
import { evidence } from '../evidence.ts'
import { type Measures, typedIn } from '../measures.ts'

/**
 * Readings that cannot be true together are a slip of the gauge, the thermometer or the refrigerant, and no fault of
 * the system: a suction line colder than the bubble temperature at its own pressure. Nothing while they can.
 */
export function consistent({ readings }: Visit, { coldestSuction }: Measures): readonly Condition[] {
  const line = readings['suction-temperature']
  if (!line || !coldestSuction) return []
  const u = Math.hypot(line.quantity.u ?? 0, coldestSuction.quantity.u ?? 0)
  if (line.quantity.si >= add(coldestSuction.quantity, quantity('temperature difference', -u)).si) return []
  const statement = say`The suction line reads ${line.quantity}, colder than the refrigerant there can be, ${coldestSuction.quantity}`
  return [
    {
      id: 'consistent',
      state: 'unknown',
      evidence: evidence(statement, [typedIn(line), coldestSuction.evidence]),
      remedy: say`Check the thermometer and its contact, the gauge, and that the refrigerant is the one on the nameplate; read again`,
      next: {
        entry: { kind: 'reading', what: 'suction-temperature' },
        why: say`the suction line and its pressure do not fit together`,
      },
    },
  ]
}
