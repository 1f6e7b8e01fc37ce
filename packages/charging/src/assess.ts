import type { Memory } from '@chargewright/diagnosis'
import { type Problem, say } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import type { Visit } from '@chargewright/visit'
import type { Assessment, Finding, MethodId } from './assessment.ts'
import { cautions, cautionsBeside } from './cautions.ts'
import { chooseMethod } from './choose-method.ts'
import { missingEntries } from './gate.ts'
import { type Measures, measure } from './measures/measures.ts'
import { bySightGlass } from './methods/sight-glass.ts'
import { bySubcooling } from './methods/subcooling.ts'
import { bySuperheat } from './methods/superheat.ts'
import { byWeight } from './methods/weight.ts'
import type { Case, Ruling } from './ruling.ts'
import { VERSION } from './version.ts'
import type { Accessory } from './weigh-in/accessory-charge.ts'
import { statedAccessories } from './weigh-in/stated-accessories.ts'

const RULINGS: Readonly<Record<MethodId, (asked: Case) => Ruling>> = {
  superheat: bySuperheat,
  subcooling: bySubcooling,
  'sight-glass': bySightGlass,
  weight: byWeight,
}

/**
 * From a visit to its answer: which method the system allows, whether its conditions hold, what the readings say, and
 * whether another cause would explain them as well. The same visit always gets the same answer.
 *
 * @param added parts of the system beside those that the visit states, which a charge by weight fills too
 * @param memory what earlier visits taught about this very system
 *
 * Never throws for anything a visit can contain: what cannot be read or derived comes back under `problems`, and the
 * finding is then *cannot tell* with the entry that would help.
 */
export function assess(visit: Visit, added: readonly Accessory[] = [], memory?: Memory): Assessment {
  const { refrigerant: name } = visit.system.facts
  if (name === undefined) {
    const missing = missingEntries([
      { entry: { kind: 'fact', what: 'refrigerant' }, why: say`nothing can be derived without the refrigerant` },
    ])
    return answer(visit, missing, {}, [])
  }
  const refrigerant = findRefrigerant(name)
  if (!refrigerant.ok) {
    const unknown = missingEntries([
      {
        entry: { kind: 'fact', what: 'refrigerant' },
        why: say`the refrigerant “${name.slice(0, 40)}” is not one that can be computed`,
      },
    ])
    return answer(visit, unknown, {}, [refrigerant.error])
  }
  const { measures, problems } = measure(visit, refrigerant.value)
  const method = chooseMethod(visit)
  if (!method.ok) return answer(visit, missingEntries(method.error), measures, problems)

  const stated = statedAccessories(visit.system.facts)
  const accessories = [...stated.accessories, ...added]
  const asked: Case = { visit, refrigerant: refrigerant.value, measures, accessories, ...(memory ? { memory } : {}) }
  const ruling = RULINGS[method.value.id](asked)
  return {
    ...answer(visit, ruling.finding, measures, [...problems, ...stated.problems, ...(ruling.problems ?? [])]),
    method: method.value,
    conditions: ruling.conditions,
    lookAlikes: ruling.lookAlikes,
    cautions: cautions(asked, ruling.finding),
    beside: cautionsBeside(asked),
    ...(ruling.target ? { target: ruling.target } : {}),
    ...(ruling.memory ? { memory: ruling.memory } : {}),
  }
}

function answer(visit: Visit, finding: Finding, measures: Measures, problems: readonly Problem[]): Assessment {
  return {
    version: VERSION,
    method: undefined,
    finding,
    conditions: [],
    lookAlikes: [],
    cautions: [],
    beside: cautionsBeside({ visit }),
    measures,
    problems: [...visit.problems, ...problems.map((problem) => ({ eventId: '', problem }))],
    doubts: visit.doubts,
  }
}
