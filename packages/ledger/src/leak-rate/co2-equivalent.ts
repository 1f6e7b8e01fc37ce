import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import { type GwpEdition, refrigerantFacts } from '@chargewright/refrigerant'
import type { Mass } from '../cylinder/cylinder.ts'

export interface Co2Equivalent {
  readonly tonnes: number
  /** Standard uncertainty from the weight alone. */
  readonly u_tonnes: number
  readonly gwp: number
  /** Assessment report that the potential is from; each law names its own. */
  readonly edition: GwpEdition
  readonly source: string
  readonly confirmed: boolean
}

/**
 * Mass times the global warming potential over 100 years.
 *
 * @param mass kg, 0 to 1 000 000
 * @returns tonnes of carbon dioxide; `unknown` for a refrigerant that is not listed or has no potential in that edition
 */
export function co2Equivalent(refrigerant: string, mass: Mass, edition: GwpEdition): Result<Co2Equivalent, Problem> {
  const problem = outOfRange('mass', mass.si, 0, 1e6, 'kg')
  if (problem) return fail(problem)
  const facts = refrigerantFacts(refrigerant)
  if (!facts.ok) return facts
  const gwp = facts.value.gwp[edition]
  if (!gwp) return fail(noPotential(facts.value.name, edition, Object.keys(facts.value.gwp)))
  const { value, source, confirmed } = gwp
  return ok({
    tonnes: (mass.si * value) / 1000,
    u_tonnes: ((mass.u ?? 0) * value) / 1000,
    gwp: value,
    edition,
    source,
    confirmed,
  })
}

function noPotential(name: string, edition: GwpEdition, others: readonly string[]): Problem {
  const accepted =
    others.length > 0
      ? `an edition in which it has a potential: ${others.join(', ')}`
      : 'a refrigerant whose potential is known'
  return { kind: 'unknown', field: `global warming potential of ${name}`, value: edition, accepted }
}
