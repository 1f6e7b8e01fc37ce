import type { Cause, Diagnosis } from '@chargewright/diagnosis'

/** A diagnosis with one cause ruled out by something that it was not told: what is left is weighed anew. */
export function withoutCause(diagnosis: Diagnosis, ruledOut: Cause): Diagnosis {
  const singles = diagnosis.singles.filter(({ cause }) => cause !== ruledOut)
  const pairs = diagnosis.pairs.filter(({ causes }) => !causes.includes(ruledOut))
  const [left, leftOfPairs] = [sum(singles), sum(pairs)]
  const [single, pair] = [(1 - diagnosis.pairShare) * left, diagnosis.pairShare * leftOfPairs]
  return {
    ...diagnosis,
    singles: singles.map((each) => ({ ...each, probability: each.probability / left })),
    pairs: pairs.map((each) => ({ ...each, probability: each.probability / leftOfPairs })),
    pairShare: pairs.length === 0 ? 0 : pair / (single + pair),
  }
}

const sum = (parts: readonly { readonly probability: number }[]) =>
  parts.reduce((all, { probability }) => all + probability, 0)
