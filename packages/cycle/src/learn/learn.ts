import { inverse, Matrix } from 'ml-matrix'
import { responseAt, type Seen } from '../response.ts'
import { type SteadyState, solve } from '../solve.ts'
import type { System, Unknowns } from '../system.ts'
import { OBSERVABLE_NAMES, type Observable, type Observation, structuralSd } from './observation.ts'
import { AS_SIZED, adjusted, healthOf, PARAMETER_NAMES, PARAMETERS, type Parameters } from './parameter.ts'

/** What is believed about a system: parameters with their covariance, in the order of `PARAMETER_NAMES`. */
export interface Belief {
  readonly parameters: Parameters
  readonly covariance: readonly (readonly number[])[]
  /** What the model reads too high in each reading whatever its parameters: learnt together with them. */
  readonly bias: Readonly<Partial<Record<Observable, number>>>
}

export interface Learned extends Belief {
  /** Charge at the last set of readings, and its standard deviation. */
  readonly charge_kg: number
  readonly chargeSd_kg: number
  /** The system as it is now believed to be. */
  readonly system: System
  /** Weighted squares of what is left unexplained, per reading: near 1 or below when the model can explain them. */
  readonly misfit: number
  readonly iterations: number
}

const MOST_ITERATIONS = 12
const CLOSE = 1e-4
const DIFFERENCE = 1e-3

/** The belief in a system of which only the nameplate is known. */
export const freshBelief = (): Belief => ({
  parameters: AS_SIZED,
  covariance: PARAMETER_NAMES.map((a) => PARAMETER_NAMES.map((b) => (a === b ? PARAMETERS[a].sd ** 2 : 0))),
  bias: {},
})

/** What an earlier visit taught, for a later one: everything but the charge, which may have leaked. */
export function carriedOver({ parameters, covariance, bias }: Belief): Belief {
  const at = PARAMETER_NAMES.indexOf('charge')
  return {
    parameters: { ...parameters, charge: 0 },
    covariance: covariance.map((row, i) =>
      row.map((value, j) => (i === at && j === at ? PARAMETERS.charge.sd ** 2 : i === at || j === at ? 0 : value)),
    ),
    bias,
  }
}

/**
 * Updates what is believed about a system from readings, by damped Gauss–Newton on readings and prior together
 * (maximum a posteriori; Levenberg's damping). A structural bias per reading, the same in all sets of one visit, is
 * carried as further unknowns: so repeated sets do not count as independent proof, and the change over a weighed step
 * counts in full.
 *
 * @param observations settled sets of one visit, the first with `added_kg` 0
 * @returns undefined when the model has no steady state at the believed parameters and any set's conditions
 */
export function learn(
  system: System,
  observations: readonly Observation[],
  prior: Belief = freshBelief(),
): Learned | undefined {
  const rows = readingsIn(observations)
  const biases = OBSERVABLE_NAMES.filter((name) => rows.some((row) => row.name === name))
  const count = PARAMETER_NAMES.length
  const size = count + biases.length
  const centre = [
    ...PARAMETER_NAMES.map((name) => prior.parameters[name]),
    ...biases.map((name) => prior.bias[name] ?? 0),
  ]
  const precision = Matrix.zeros(size, size)
  precision.setSubMatrix(inverse(new Matrix(prior.covariance.map((row) => [...row]))), 0, 0)
  for (const [k, name] of biases.entries()) {
    const typical = rows.find((row) => row.name === name)!.value
    precision.set(count + k, count + k, structuralSd(name, typical) ** -2)
  }

  let x = centre
  let model = modelled(system, observations, rows, biases, x)
  if (!model) return undefined
  let cost = costOf(rows, model.values, precision, x, centre)
  let damping = 1e-3
  let iterations = 0
  let hessian = precision
  let slopes = jacobian(system, observations, rows, biases, x, model)
  for (; iterations < MOST_ITERATIONS; iterations++) {
    const { normal, gradient } = normalEquations(rows, model.values, slopes, precision, x, centre)
    hessian = normal
    const damped = normal.clone()
    for (let i = 0; i < size; i++) damped.set(i, i, normal.get(i, i) * (1 + damping))
    const step = inverse(damped).mmul(gradient).to1DArray()
    const trial = x.map((value, i) => value + step[i]!)
    const there = modelled(system, observations, rows, biases, trial, model.starts)
    const trialCost = there ? costOf(rows, there.values, precision, trial, centre) : Number.POSITIVE_INFINITY
    if (there && trialCost <= cost) {
      const gained = cost - trialCost
      ;[x, model, cost, damping] = [trial, there, trialCost, damping / 10]
      if (gained < CLOSE * (1 + cost)) break
      slopes = jacobian(system, observations, rows, biases, x, model)
    } else {
      damping *= 10
      if (damping > 1e6) break
    }
  }
  return result(system, observations, rows, biases, x, model.values, inverse(hessian), iterations)
}

interface Row {
  readonly set: number
  readonly name: Observable
  readonly value: number
  readonly sd: number
}

function readingsIn(observations: readonly Observation[]): readonly Row[] {
  return observations.flatMap(({ readings }, set) =>
    OBSERVABLE_NAMES.flatMap((name) => {
      const reading = readings[name]
      return reading ? [{ set, name, value: reading.value, sd: reading.sd }] : []
    }),
  )
}

const parametersIn = (x: readonly number[]): Parameters =>
  Object.fromEntries(PARAMETER_NAMES.map((name, i) => [name, x[i]!])) as Parameters

/** Every reading as the model has it, biases included, and the solutions to start neighbours from. */
function modelled(
  system: System,
  observations: readonly Observation[],
  rows: readonly Row[],
  biases: readonly Observable[],
  x: readonly number[],
  starts: readonly (Unknowns | undefined)[] = [],
): { readonly values: readonly number[]; readonly starts: readonly Unknowns[] } | undefined {
  const parameters = parametersIn(x)
  const believed = adjusted(system, parameters)
  const solved: SteadyState[] = []
  for (const [set, { conditions, added_kg }] of observations.entries()) {
    const solution = solve(believed, conditions, healthOf(system, parameters, added_kg), starts[set])
    if (solution.kind !== 'steady') return undefined
    solved.push(solution)
  }
  const values = rows.map(({ set, name }) => {
    const bias = x[PARAMETER_NAMES.length + biases.indexOf(name)]!
    return solved[set]!.readings[name] + bias
  })
  return { values, starts: solved.map(({ unknowns }) => unknowns) }
}

/** One-sided differences along the tangent for the parameters; a bias adds itself. Rows by unknowns. */
function jacobian(
  system: System,
  observations: readonly Observation[],
  rows: readonly Row[],
  biases: readonly Observable[],
  x: readonly number[],
  { starts }: { readonly starts: readonly Unknowns[] },
): Matrix {
  const J = Matrix.zeros(rows.length, x.length)
  const here = parametersIn(x)
  const believed = adjusted(system, here)
  const responses = observations.map(({ conditions, added_kg }, set) =>
    responseAt(believed, conditions, healthOf(system, here, added_kg), starts[set]!, observed),
  )
  const along = (changed: System, parameters: Parameters) =>
    responses.map((follow, set) => follow(changed, healthOf(system, parameters, observations[set]!.added_kg)))
  const base = along(believed, here)
  for (const [k, name] of PARAMETER_NAMES.entries()) {
    const parameters = { ...here, [name]: here[name] + DIFFERENCE }
    const moved = along(adjusted(system, parameters), parameters)
    for (const [i, row] of rows.entries()) {
      const at = OBSERVABLE_NAMES.indexOf(row.name)
      J.set(i, k, (moved[row.set]![at]! - base[row.set]![at]!) / DIFFERENCE)
    }
  }
  for (const [i, { name }] of rows.entries()) J.set(i, PARAMETER_NAMES.length + biases.indexOf(name), 1)
  return J
}

const observed: Seen = (readings) => Float64Array.from(OBSERVABLE_NAMES, (name) => readings[name])

function normalEquations(
  rows: readonly Row[],
  values: readonly number[],
  J: Matrix,
  precision: Matrix,
  x: readonly number[],
  centre: readonly number[],
): { readonly normal: Matrix; readonly gradient: Matrix } {
  const weighted = J.clone()
  for (const [i, { sd }] of rows.entries()) weighted.mulRow(i, 1 / sd ** 2)
  const left = Matrix.columnVector(rows.map(({ value }, i) => value - values[i]!))
  const fromPrior = precision.mmul(Matrix.columnVector(x.map((value, i) => centre[i]! - value)))
  return {
    normal: J.transpose().mmul(weighted).add(precision),
    gradient: weighted.transpose().mmul(left).add(fromPrior),
  }
}

function costOf(
  rows: readonly Row[],
  values: readonly number[],
  precision: Matrix,
  x: readonly number[],
  centre: readonly number[],
): number {
  const d = Matrix.columnVector(x.map((value, i) => value - centre[i]!))
  return squares(rows, values) + d.transpose().mmul(precision).mmul(d).get(0, 0)
}

const squares = (rows: readonly Row[], values: readonly number[]) =>
  rows.reduce((sum, { value, sd }, i) => sum + ((value - values[i]!) / sd) ** 2, 0)

function result(
  system: System,
  observations: readonly Observation[],
  rows: readonly Row[],
  biases: readonly Observable[],
  x: readonly number[],
  values: readonly number[],
  covariance: Matrix,
  iterations: number,
): Learned {
  const parameters = parametersIn(x)
  const count = PARAMETER_NAMES.length
  const first = system.rated.charge_kg * Math.exp(parameters.charge)
  return {
    parameters,
    covariance: covariance.subMatrix(0, count - 1, 0, count - 1).to2DArray(),
    bias: Object.fromEntries(biases.map((name, k) => [name, x[count + k]!])),
    charge_kg: healthOf(system, parameters, observations.at(-1)?.added_kg ?? 0).charge_kg,
    chargeSd_kg: first * Math.sqrt(covariance.get(0, 0)),
    system: adjusted(system, parameters),
    misfit: squares(rows, values) / Math.max(rows.length, 1),
    iterations,
  }
}
