import {
  evidence,
  fail,
  inQuadrature,
  type Measure,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'

type Mass = Quantity<'mass'>

/** No system of this trade takes more in one weighing. */
const MAX_KG = 1e5

/**
 * The charge to weigh in: the nameplate charge and each part that adds to it or takes from it, with the tree of all.
 * The uncertainties are independent and add in quadrature.
 *
 * @returns a problem when the parts take away more than the nameplate gives
 */
export function weighInTotal(
  nameplate: Measure<Mass>,
  parts: readonly Measure<Mass>[],
): Result<Measure<Mass>, Problem> {
  const all = [nameplate, ...parts]
  const si = all.reduce((sum, part) => sum + part.quantity.si, 0)
  const problem = outOfRange('charge to weigh in', si, Number.MIN_VALUE, MAX_KG, 'kg')
  if (problem) return fail(problem)
  const total = quantity('mass', si, inQuadrature(...all.map((part) => part.quantity.u)))
  const tree = all.map((part) => part.evidence)
  return ok({ quantity: total, evidence: evidence(say`Charge to weigh in ${total}`, 'sum of its parts', tree) })
}
