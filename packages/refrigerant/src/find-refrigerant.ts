import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import type { FluidFile } from './data-file.ts'
import { buildEngine } from './engine.ts'
import { pairsOf } from './pair-data.ts'
import { recipeOf } from './recipe.ts'
import { type Refrigerant, refrigerant } from './refrigerant.ts'
import { type Listed, listed, listedAs, similarNames } from './refrigerant-name.ts'

const found = new Map<string, Result<Refrigerant, Problem>>()

/**
 * A refrigerant by designation or common name, however it is spelt: `R410A`, `r-410a`, `410a`, `propane`, `CO2`.
 *
 * Compiling takes about a millisecond; the same object is returned when asked again. A blend is refused when one of
 * its pairs has no published mixing parameters: a guess there can be wrong by some kelvin without showing it.
 *
 * @returns `unknown` for a name that is not listed, `unsolved` for a blend that cannot be computed, with the pair
 */
export function findRefrigerant(name: string): Result<Refrigerant, Problem> {
  const entry = listedAs(name)
  if (!entry) return fail(unknownName(name))
  const known = found.get(entry.name)
  if (known) return known
  const result = compile(entry)
  found.set(entry.name, result)
  return result
}

/** Designations of all refrigerants that can be computed, in numerical order. */
export function refrigerantNames(): readonly string[] {
  return listed.filter((entry) => pairsOf(recipeOf(entry).fluids).kind === 'complete').map((entry) => entry.name)
}

function compile(entry: Listed): Result<Refrigerant, Problem> {
  const { fluids, massFractions } = recipeOf(entry)
  return compileRecipe(entry.name, fluids, massFractions)
}

/** The refrigerant of these fluids, or the pair that is missing. */
export function compileRecipe(
  name: string,
  fluids: readonly FluidFile[],
  massFractions: readonly number[],
): Result<Refrigerant, Problem> {
  const pairs = pairsOf(fluids)
  if (pairs.kind === 'missing') {
    const accepted = `no published mixing parameters for ${pairs.names.join(', ')}`
    return fail({ kind: 'unsolved', field: 'refrigerant', value: name, accepted })
  }
  const engine = buildEngine(fluids, Float64Array.from(massFractions), pairs.pairs)
  if (!engine) {
    const accepted = 'its bubble and dew lines could not be followed until they meet'
    return fail({ kind: 'unsolved', field: 'refrigerant', value: name, accepted })
  }
  return ok(
    refrigerant(
      name,
      fluids.map((fluid) => fluid.name),
      engine,
    ),
  )
}

export function unknownName(name: string): Problem {
  const similar = similarNames(name)
  const accepted =
    similar.length > 0 ? `one of ${similar.join(', ')}` : 'a listed refrigerant, such as R-410A or propane'
  return { kind: 'unknown', field: 'refrigerant', value: name, accepted }
}
