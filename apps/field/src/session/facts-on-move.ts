import type { FactName, SystemFacts, SystemStatement } from '@chargewright/visit'

/** What is said where a visit goes from one system to another. */
export interface FactsOnMove {
  /** At the visit: what the new system is known to be, as far as nobody stated otherwise there. */
  readonly known: SystemStatement
  /** At the old system: the facts as they were before the visit stated them, as far as they still are as it stated them. */
  readonly left: SystemStatement
  /** At the new system: what the visit stated and it did not know. */
  readonly brought: SystemStatement
}

/**
 * @param begun what the visit began with
 * @param stated what a person stated at it; a fact that was taken back is null
 * @param from what the old system is known to be
 * @param to what the new one is known to be
 */
export function factsOnMove(
  begun: SystemFacts,
  stated: SystemStatement,
  from: SystemFacts,
  to: SystemFacts,
): FactsOnMove {
  // A name that was typed at the visit named the system that it was thought to be at.
  const { name, ...own } = stated
  const atVisit: SystemStatement = { ...begun, ...stated }
  const others = namesOf(begun, to, { ...(name !== undefined && { name }) }).filter((fact) => !Object.hasOwn(own, fact))
  return {
    known: picked(others, (fact) => (isSame(to[fact], atVisit[fact]) ? undefined : (to[fact] ?? null))),
    left: picked(namesOf(stated), (fact) => (isSame(from[fact], atVisit[fact]) ? (begun[fact] ?? null) : undefined)),
    brought: picked(namesOf(own), (fact) => (to[fact] === undefined ? (atVisit[fact] ?? undefined) : undefined)),
  }
}

/** Those facts of a statement that are wanted. */
export const only = (facts: SystemStatement, isWanted: (name: FactName) => boolean): SystemStatement =>
  picked(namesOf(facts).filter(isWanted), (name) => facts[name])

const namesOf = (...statements: readonly SystemStatement[]): readonly FactName[] =>
  [...new Set(statements.flatMap((facts) => Object.keys(facts)))] as FactName[]

/** A fact that was taken back is as one that was never stated. */
const isSame = (a: unknown, b: unknown) => JSON.stringify(a ?? null) === JSON.stringify(b ?? null)

/** A statement of those facts for which there is a value. */
function picked(names: readonly FactName[], saying: (name: FactName) => unknown): SystemStatement {
  const values = names.map((name) => [name, saying(name)] as const).filter(([, value]) => value !== undefined)
  return Object.fromEntries(values) as SystemStatement
}
