import { outOfRange, type Problem } from '@chargewright/quantity'
import type { BookFinding } from './book-finding.ts'
import type { Cylinder, Mass } from './cylinder.ts'
import { type CylinderAccount, enter, openAccount, type Step } from './cylinder-account.ts'
import { judgeOpening, judgeStep } from './judge-step.ts'
import type { BookEntry, Movement } from './movement.ts'
import { standingMovements } from './standing-movements.ts'
import { type SystemAccount, systemAccounts } from './system-account.ts'

/** The cylinders and every line that was written about them, in the order of writing. */
export interface CylinderBook {
  readonly cylinders: readonly Cylinder[]
  readonly entries: readonly BookEntry[]
}

export interface BookBalance {
  readonly cylinders: readonly CylinderAccount[]
  readonly systems: readonly SystemAccount[]
  readonly steps: readonly Step[]
  readonly findings: readonly BookFinding[]
  /** Cylinders and entries that could not be taken up: they stand in the book and count for nothing. */
  readonly problems: readonly Problem[]
}

/**
 * The balance of every cylinder and every system. Nothing is lost on the way: each account closes, and the systems
 * together got what the cylinders together gave. Weights that disagree beyond the scales' uncertainty (95 %) are
 * findings, as is what must not be done with a cylinder.
 */
export function balanceBook({ cylinders, entries }: CylinderBook): BookBalance {
  const accounts = new Map<string, CylinderAccount>()
  const standing = standingMovements(entries)
  const problems: Problem[] = []
  const findings: BookFinding[] = []
  const steps: Step[] = []

  for (const [i, cylinder] of cylinders.entries()) {
    const problem = cylinderProblem(cylinder, `cylinders[${i}]`, accounts.has(cylinder.id))
    if (problem) {
      problems.push(problem)
      continue
    }
    const account = openAccount(cylinder)
    accounts.set(cylinder.id, account)
    findings.push(...judgeOpening(account))
  }
  problems.push(...standing.problems)

  for (const movement of standing.movements) {
    const before = accounts.get(movement.cylinder)
    const problem = before ? weighingProblem(movement) : unknownCylinder(movement)
    if (problem) problems.push(problem)
    if (problem || !before) continue
    const step = enter(before, movement)
    accounts.set(movement.cylinder, step.after)
    steps.push(step)
    findings.push(...judgeStep(step))
  }
  return { cylinders: [...accounts.values()], systems: systemAccounts(steps), steps, findings, problems }
}

/** What a movement of a cylinder that nobody described should have named. */
export const UNKNOWN_CYLINDER = 'a cylinder of this book'

/** A cylinder heavier than this is a typing error. */
const MAX_KG = 1e5

function cylinderProblem(cylinder: Cylinder, field: string, known: boolean): Problem | undefined {
  const { id, tare, waterCapacity, firstWeighing } = cylinder
  if (known) return { kind: 'ambiguous', field: `${field}.id`, value: id, accepted: 'an id of its own' }
  return (
    massProblem(tare, `${field}.tare`) ??
    massProblem(waterCapacity, `${field}.waterCapacity`) ??
    massProblem(firstWeighing, `${field}.firstWeighing`)
  )
}

function unknownCylinder({ id, cylinder }: Movement): Problem {
  return { kind: 'unknown', field: `movement ${id}, cylinder`, value: cylinder, accepted: UNKNOWN_CYLINDER }
}

function weighingProblem({ id, weighing }: Movement): Problem | undefined {
  const field = `movement ${id}`
  return weighing.kind === 'difference'
    ? massProblem(weighing.mass, `${field}, mass`)
    : (massProblem(weighing.before, `${field}, before`) ??
        massProblem(weighing.after, `${field}, after`) ??
        (weighing.hoses && massProblem(weighing.hoses, `${field}, hoses`)) ??
        (weighing.stated && massProblem(weighing.stated, `${field}, stated`)))
}

function massProblem({ si, u = 0 }: Mass, field: string): Problem | undefined {
  return outOfRange(field, si, 0, MAX_KG, 'kg') ?? outOfRange(`${field}, uncertainty`, u, 0, MAX_KG, 'kg')
}
