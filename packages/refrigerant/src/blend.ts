import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import { compileRecipe, unknownName } from './find-refrigerant.ts'
import type { Refrigerant } from './refrigerant.ts'
import { fluidNamed } from './refrigerant-name.ts'

/** How far the fractions may be from a sum of 1 before they are taken for a mistake. */
const SUM_TOLERANCE = 1e-6

/**
 * A blend of your own, or a designated one whose composition has shifted.
 *
 * @param massFractions by name of the pure component, 0 to 1, with the sum 1 ± 1e-6; a fraction of 0 is left out
 * @returns a problem naming the component, the sum, or the pair without published mixing parameters
 */
export function blend(massFractions: Readonly<Record<string, number>>): Result<Refrigerant, Problem> {
  const parts = Object.entries(massFractions)
  for (const [name, fraction] of parts) {
    const problem = outOfRange(`mass fraction of ${name}`, fraction, 0, 1, 'kg/kg')
    if (problem) return fail(problem)
    if (!fluidNamed(name)) return fail(unknownName(name))
  }
  const sum = parts.reduce((total, [, fraction]) => total + fraction, 0)
  const problem = outOfRange('sum of the mass fractions', sum, 1 - SUM_TOLERANCE, 1 + SUM_TOLERANCE, 'kg/kg')
  if (problem) return fail(problem)
  return ofParts(
    parts.filter(([, fraction]) => fraction > 0),
    sum,
  )
}

function ofParts(parts: readonly (readonly [string, number])[], sum: number): Result<Refrigerant, Problem> {
  const fluids = parts.map(([name]) => fluidNamed(name)!)
  const fractions = parts.map(([, fraction]) => fraction / sum)
  const twice = fluids.find((fluid, i) => fluids.indexOf(fluid) !== i)
  if (twice) {
    const accepted = 'each component once'
    return fail({ kind: 'ambiguous', field: 'mass fractions', value: twice.name, accepted })
  }
  const percent = fractions.map((fraction) => Number((100 * fraction).toPrecision(4)))
  const name = `${fluids.map((fluid) => fluid.name).join('/')} (${percent.join('/')})`
  const compiled = compileRecipe(fluids.length === 1 ? fluids[0]!.name : name, fluids, fractions)
  return compiled.ok ? ok(compiled.value) : compiled
}
