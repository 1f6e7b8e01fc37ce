import { evidence, type Quantity, quantity, say, subtract } from '@chargewright/quantity'
import type { Condition } from '../assessment.ts'
import { againstLimit } from '../compare.ts'
import { saturated } from '../measures/saturated.ts'
import { sitePressure } from '../measures/site-pressure.ts'
import { typedIn } from '../measures/typed-in.ts'
import type { Case } from '../ruling.ts'

/**
 * Readings that cannot be true together are a slip of the gauge, the thermometer or the refrigerant, and no fault of
 * the system: a suction line colder than the bubble temperature at its own pressure. Nothing while they can.
 */
export function consistent({ visit, refrigerant }: Case): readonly Condition[] {
  const line = visit.readings['suction-temperature']
  const coldest = saturated(visit.readings['suction-pressure'], 'bubble', refrigerant, sitePressure(visit, []), [])
  if (!line || !coldest) return []
  const apart = subtract(line.quantity as Quantity<'temperature'>, coldest.quantity)
  if (againstLimit(apart, NOTHING) !== 'below') return []
  const statement = say`The suction line reads ${line.quantity}, colder than the refrigerant there can be, ${coldest.quantity}`
  return [
    {
      id: 'consistent',
      state: 'unknown',
      evidence: evidence(statement, undefined, [typedIn(line), coldest.evidence]),
      remedy: say`Check the thermometer and its contact, the gauge, and that the refrigerant is the one on the nameplate; read again`,
      next: {
        entry: { kind: 'reading', what: 'suction-temperature' },
        why: say`the suction line and its pressure do not fit together`,
      },
    },
  ]
}

const NOTHING = quantity('temperature difference', 0)
