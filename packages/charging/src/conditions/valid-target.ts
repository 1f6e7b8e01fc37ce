import { evidence, type Quantity, type Statement, say } from '@chargewright/quantity'
import type { ReadingId, Visit } from '@chargewright/visit'
import type { Condition } from '../assessment.ts'
import { LIMITS } from '../limit.ts'
import type { SuperheatTarget } from '../target/superheat-target.ts'
import { readAgain } from './read-again.ts'

/**
 * The target as a condition: there must be one, and it must lie clear of the least that can be tested. In doubt where what
 * was read lies so far above that no target which it may be would change the answer: a step may go in, and the last
 * cannot be told in this weather.
 */
export function validTarget(
  visit: Visit,
  target: SuperheatTarget,
  superheat?: Quantity<'temperature difference'>,
): readonly Condition[] {
  const remedy = say`Warm the return air or wait for other weather and test again, or recover, evacuate and weigh in`
  const again = readAgain(visit, HANGS_ON)
  switch (target.kind) {
    case 'missing':
      return []
    case 'none':
      return [
        {
          id: 'target',
          state: 'unmet',
          evidence: evidence(say`No valid test: ${target.because}`, target.source),
          remedy,
          again,
        },
      ]
    case 'target': {
      const { quantity: least, source } = LIMITS.lowestTargetSuperheat
      const { quantity: aim, evidence: tree } = target.measure
      const unsure = (aim.u ?? 0) + target.departure
      const clear = aim.si - unsure >= least.si
      const plain = superheat && aim.si >= least.si && isFarAbove(superheat, aim.si + unsure)
      const judged = (state: Condition['state'], statement: Statement) =>
        ({ id: 'target', state, evidence: evidence(statement, source, [tree]) }) as const
      if (clear) return [judged('met', say`The target superheat is at least ${least}`)]
      if (plain) {
        const far = say`The target superheat ${aim} may lie below ${least}: ${superheat} is far above it, but once it comes near, this method cannot end in this weather`
        return [{ ...judged('doubtful', far), remedy }]
      }
      const none = say`No valid test: the target superheat ${aim} is not clearly above ${least}`
      return [{ ...judged('unmet', none), remedy, again }]
    }
  }
}

const HANGS_ON: readonly ReadingId[] = [
  'return-air-wet-bulb',
  'return-air-humidity',
  'return-air-dry-bulb',
  'condenser-entering-air',
]

/** Above the band about even the highest target, by more than its own uncertainty. */
const isFarAbove = ({ si, u = 0 }: Quantity, highest: number): boolean =>
  si - u > highest + LIMITS.superheatTolerance.quantity.si
