import { evidence, say } from '@chargewright/quantity'
import type { Condition } from '../assessment.ts'
import { LIMITS } from '../limit.ts'
import type { SuperheatTarget } from '../target/superheat-target.ts'

/** The target as a condition: there must be one, and it must lie clear of the least that can be tested. */
export function validTarget(target: SuperheatTarget): readonly Condition[] {
  const remedy = say`Warm the return air or wait for other weather and test again, or recover, evacuate and weigh in`
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
        },
      ]
    case 'target': {
      const { quantity: least, source } = LIMITS.lowestTargetSuperheat
      const { quantity: aim, evidence: tree } = target.measure
      const clear = aim.si - (aim.u ?? 0) - target.departure >= least.si
      const statement = clear
        ? say`The target superheat is at least ${least}`
        : say`No valid test: the target superheat ${aim} is not clearly above ${least}`
      return [
        {
          id: 'target',
          state: clear ? 'met' : 'unmet',
          evidence: evidence(statement, source, [tree]),
          ...(clear ? {} : { remedy }),
        },
      ]
    }
  }
}
