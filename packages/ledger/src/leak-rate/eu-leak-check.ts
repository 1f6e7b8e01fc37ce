import { fail, ok, outOfRange, type Problem, quantity, type Result, type Statement, say } from '@chargewright/quantity'
import { refrigerantFacts } from '@chargewright/refrigerant'
import type { Mass } from '../cylinder/cylinder.ts'
import { co2Equivalent } from './co2-equivalent.ts'
import { type CheckStep, EU_2024_573, EU_ANNEX_TWO_SECTION_ONE } from './laws/eu-2024-573.ts'
import { REGULATED_HYDROFLUOROCARBONS } from './regulated-hydrofluorocarbons.ts'

/** Stationary equipment and what is in it. */
export interface Equipment {
  readonly refrigerant: string
  readonly charge: Mass
  readonly hermeticAndLabelled?: boolean
  readonly leakDetection?: boolean
}

export interface EuLeakCheck {
  /** Greatest interval between checks; absent where none is asked for. */
  readonly everyMonths?: number
  /** Of the gases of Annex I; 0 without one. */
  readonly tonnes: number
  /** Of the gases of Annex II, section 1. */
  readonly unsaturated: Mass
  readonly detectionRequired: boolean
  readonly because: Statement
  readonly source: string
  /** Always false: the intervals were recalled. They must be held against the regulation before anyone relies on them. */
  readonly confirmed: false
}

/**
 * How often equipment must be checked for leaks. A blend counts by both of its parts, and the shorter interval holds.
 *
 * @returns `unknown` for a refrigerant that is not listed
 * @source Regulation (EU) 2024/573, Article 5, recalled
 */
export function euLeakCheck(equipment: Equipment): Result<EuLeakCheck, Problem> {
  const { charge } = equipment
  const problem = outOfRange('charge', charge.si, 0, 1e6, 'kg')
  if (problem) return fail(problem)
  const facts = refrigerantFacts(equipment.refrigerant)
  if (!facts.ok) return facts
  const parts = Object.entries(facts.value.composition.value)
  const share = parts.reduce((sum, [name, part]) => sum + (EU_ANNEX_TWO_SECTION_ONE.has(name) ? part : 0), 0)
  const unsaturated = quantity('mass', share * charge.si)
  const annexOne = parts.some(([name]) => REGULATED_HYDROFLUOROCARBONS.has(name))
  const equivalent = annexOne ? co2Equivalent(equipment.refrigerant, charge, EU_2024_573.gwpEdition.value) : undefined
  if (equivalent && !equivalent.ok) return equivalent
  const tonnes = equivalent?.value.tonnes ?? 0
  return ok({
    ...interval(equipment, tonnes, unsaturated),
    tonnes,
    unsaturated,
    detectionRequired: tonnes >= EU_2024_573.detectionFrom_t.value,
    source: EU_2024_573.annexOne_t.source,
    confirmed: false,
  })
}

function interval({ hermeticAndLabelled, leakDetection }: Equipment, tonnes: number, unsaturated: Mass) {
  const { annexOne_t, annexTwo_kg, hermeticBelow, detectionFactor } = EU_2024_573
  const held = say`${Number(tonnes.toPrecision(4))} t of CO₂ equivalent and ${unsaturated} of unsaturated gases`
  const sealed = hermeticAndLabelled === true
  if (sealed && tonnes < hermeticBelow.value.annexOne_t && unsaturated.si < hermeticBelow.value.annexTwo_kg) {
    return { because: say`Hermetically sealed and labelled, with ${held}: exempt` }
  }
  const months = Math.min(monthsAt(annexOne_t.value, tonnes), monthsAt(annexTwo_kg.value, unsaturated.si))
  if (months === Number.POSITIVE_INFINITY) return { because: say`It holds ${held}: below the least amount` }
  const everyMonths = leakDetection ? months * detectionFactor.value : months
  return { everyMonths, because: say`It holds ${held}: a check at least every ${everyMonths} months` }
}

/** The interval of the highest step reached; none below the first. */
const monthsAt = (steps: readonly CheckStep[], amount: number): number =>
  steps.findLast(({ from }) => amount >= from)?.months ?? Number.POSITIVE_INFINITY
