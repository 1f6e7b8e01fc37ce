import type { MixtureModel } from '../mixture/mixture-model.ts'
import { type EnvelopeNode, nodeOf } from './envelope-node.ts'
import { firstPoint } from './first-point.ts'
import { hermite } from './hermite.ts'
import { type Incipient, incipient, type Side, solveIncipient } from './incipient.ts'

/**
 * The bubble or the dew line of one composition, followed in small steps of the spread S from a place where the first
 * guess is safe. Equations of state have many false roots inside the dome that satisfy equal fugacity and equal
 * pressure; a point on the connected line cannot be one of them. Every later solve starts from between two nodes.
 */
export interface Envelope {
  readonly side: Side
  /** From the coldest node to the one nearest the critical point. */
  readonly nodes: readonly EnvelopeNode[]
}

const ITERATIONS = 6
const LONGEST_STEP = 0.6
const SHORTEST_STEP = 0.002
/** Nodes a step is predicted from: the third makes a trace a third faster, a fourth hardly more. */
const LOOK_BACK = 3
const INWARD_SHARE = 0.2
/** The trace ends at this spread; nearer the critical point the two phases cannot be told apart reliably. */
const LAST_SPREAD = 0.08

/** Follows one line from `minTemperature` to the neighbourhood of the critical point; undefined if no start is found. */
export function traceEnvelope(
  model: MixtureModel,
  z: Float64Array,
  side: Side,
  minTemperature: number,
): Envelope | undefined {
  const work = incipient(model, z, side)
  if (!firstPoint(work)) return undefined
  const sign = side === 'bubble' ? 1 : -1
  const first = nodeOf(work)
  const lnTMin = Math.log(minTemperature)
  const colder = follow(work, first, sign, (node) => node.u[node.u.length - 1]! < lnTMin)
  const warmer = follow(work, first, -sign, (node) => Math.abs(node.S) <= LAST_SPREAD)
  return { side, nodes: [...colder.reverse(), ...warmer.slice(1)] }
}

/** As much of one line as leads from its first point past a pressure; undefined if no start is found. */
export function traceToPressure(
  model: MixtureModel,
  z: Float64Array,
  side: Side,
  pressure_Pa: number,
): Envelope | undefined {
  const work = incipient(model, z, side)
  if (!firstPoint(work)) return undefined
  const sign = side === 'bubble' ? 1 : -1
  const first = nodeOf(work)
  const lnP = Math.log(pressure_Pa)
  if (first.lnP < lnP) return { side, nodes: follow(work, first, -sign, (node) => node.lnP >= lnP) }
  return { side, nodes: follow(work, first, sign, (node) => node.lnP <= lnP).reverse() }
}

/** Nodes from `from` on, in steps of S towards more or less spread until `done`, or until even the shortest step fails. */
function follow(work: Incipient, from: EnvelopeNode, direction: number, done: (node: EnvelopeNode) => boolean) {
  const nodes = [from]
  let last = from
  let length = LONGEST_STEP
  while (!done(last)) {
    // Towards the critical point the step shrinks with the spread that is left.
    const inward = direction * last.S < 0
    const step = inward ? Math.min(length, INWARD_SHARE * Math.abs(last.S)) : length
    const S = last.S + direction * step
    predict(work.u, nodes.slice(-LOOK_BACK), S)
    const iterations = solveIncipient(work, 'spread', S, ITERATIONS)
    const node = iterations > 0 ? nodeOf(work) : undefined
    if (node && smooth(last, node)) {
      nodes.push(node)
      last = node
      if (iterations <= 3) length = Math.min(LONGEST_STEP, length * 1.5)
    } else {
      length = step / 2
      if (length < SHORTEST_STEP) break
    }
  }
  return nodes
}

/** Along the tangent from the first node, later along the polynomial through the last ones and their tangents. */
function predict(u: Float64Array, nodes: readonly EnvelopeNode[], S: number): void {
  const spread = Float64Array.from(nodes, (node) => node.S)
  hermite(nodes, spread, new Float64Array(nodes.length).fill(1), 0, nodes.length, S, u)
}

/** A step that landed on another line shows as a jump against the trapezoid of both tangents. */
function smooth(a: EnvelopeNode, b: EnvelopeNode): boolean {
  const half = (b.S - a.S) / 2
  const k = a.u.length - 1
  const expected = (a.du[k]! + b.du[k]!) * half
  const jump = Math.abs(b.u[k]! - a.u[k]! - expected)
  return Number.isFinite(b.dLnP) && jump < 0.02 + 0.2 * Math.abs(expected)
}
