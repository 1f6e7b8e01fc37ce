import { ok, type Problem, type Result } from '@chargewright/quantity'
import { type Fact, type RefrigerantFacts, refrigerantFacts, refrigerantNames } from '@chargewright/refrigerant'
import { withNearNames } from '../near-names.ts'

/** One refrigerant, in the very keys that `--json` prints. What is not known is absent. */
export interface ListedRefrigerant {
  readonly refrigerant: string
  readonly kind: 'pure' | 'blend'
  /** Mass fraction of each component. */
  readonly components: Readonly<Record<string, number>>
  readonly safety_class?: string
  /** At one standard atmosphere. */
  readonly glide_K?: number
  readonly normal_bubble_K?: number
  readonly normal_dew_K?: number
  readonly gwp_AR4?: number
  readonly gwp_AR5?: number
  readonly gwp_AR6?: number
  readonly lower_flammable_limit_kg_m3?: number
  readonly practical_limit_kg_m3?: number
  readonly concentration_limit_kg_m3?: number
  readonly ozone_class?: string
  readonly typical_use?: string
  readonly cylinder_rule?: string
  /** Where each value comes from, by its key. */
  readonly sources: Readonly<Record<string, string>>
  /** Keys of values that were not checked against their source. */
  readonly unconfirmed: readonly string[]
}

/** The refrigerants named, or all that can be computed, in the order of their numbers. */
export function list(names: readonly string[]): readonly Result<ListedRefrigerant, Problem>[] {
  return (names.length > 0 ? names : refrigerantNames()).map(listed)
}

export function listed(name: string): Result<ListedRefrigerant, Problem> {
  const facts = withNearNames(refrigerantFacts(name))
  return facts.ok ? ok(row(facts.value)) : facts
}

function row(facts: RefrigerantFacts): ListedRefrigerant {
  const { composition, normalBoiling, gwp } = facts
  const boiling = (key: 'glide_K' | 'bubble_K' | 'dew_K') =>
    normalBoiling && { ...normalBoiling, value: normalBoiling.value[key] }
  const known = knownOf({
    components: composition,
    safety_class: facts.safetyClass,
    glide_K: boiling('glide_K'),
    normal_bubble_K: boiling('bubble_K'),
    normal_dew_K: boiling('dew_K'),
    gwp_AR4: gwp.AR4,
    gwp_AR5: gwp.AR5,
    gwp_AR6: gwp.AR6,
    lower_flammable_limit_kg_m3: facts.lowerFlammableLimit_kg_m3,
    practical_limit_kg_m3: facts.practicalLimit_kg_m3,
    concentration_limit_kg_m3: facts.concentrationLimit_kg_m3,
    ozone_class: facts.ozoneClass,
    typical_use: facts.typicalUse,
    cylinder_rule: facts.cylinderRule,
  })
  return {
    refrigerant: facts.name,
    kind: facts.kind,
    ...(Object.fromEntries(known.map(([key, fact]) => [key, fact.value])) as Pick<ListedRefrigerant, 'components'>),
    sources: Object.fromEntries(known.map(([key, fact]) => [key, fact.source])),
    unconfirmed: known.filter(([, fact]) => !fact.confirmed).map(([key]) => key),
  }
}

/** The facts that there are, by the key under which they are printed. */
function knownOf(
  facts: Readonly<Record<string, Fact<unknown> | undefined>>,
): readonly (readonly [string, Fact<unknown>])[] {
  return Object.entries(facts).flatMap(([key, fact]) => (fact ? [[key, fact] as const] : []))
}
