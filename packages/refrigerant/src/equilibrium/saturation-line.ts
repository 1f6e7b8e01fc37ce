import type { MixtureModel } from '../mixture/mixture-model.ts'
import type { Envelope } from './envelope.ts'
import { type EnvelopeNode, hermite } from './envelope-node.ts'
import { type Incipient, incipient, solveIncipient } from './incipient.ts'

/** A traced bubble or dew line, ready to be solved at any temperature or pressure. */
export interface SaturationLine {
  readonly nodes: readonly EnvelopeNode[]
  /** ln T and ln p of the nodes, each as far as it rises: a line that turns back is only used up to its turn. */
  readonly lnT: Float64Array
  readonly lnP: Float64Array
  readonly work: Incipient
}

/** More than the interpolation between two nodes can be wrong by: a solution this far off is on another line. */
const MAX_DEPARTURE = 0.05
const ITERATIONS = 12

export function saturationLine(model: MixtureModel, z: Float64Array, { nodes, side }: Envelope): SaturationLine {
  return {
    nodes,
    lnT: rising(nodes.map(({ u }) => u[u.length - 1]!)),
    lnP: rising(nodes.map(({ lnP }) => lnP)),
    work: incipient(model, z, side),
  }
}

/** Solves the line at ln T or ln p; the answer is in `line.work`. False outside the traced part or without convergence. */
export function solveLine(line: SaturationLine, specified: 'temperature' | 'pressure', value: number): boolean {
  const { work } = line
  if (!guessOnLine(line, specified, value, work.u)) return false
  return solveIncipient(work, specified, value, ITERATIONS) > 0 && onLine(line, specified, value)
}

/** Whether the solution in `line.work` lies on the traced line; a false root lies elsewhere. */
export function onLine(line: SaturationLine, specified: 'temperature' | 'pressure', value: number): boolean {
  const { u, du: guess } = line.work
  if (!guessOnLine(line, specified, value, guess)) return false
  for (let k = 0; k < guess.length; k++) {
    if (!(Math.abs(u[k]! - guess[k]!) < MAX_DEPARTURE)) return false
  }
  return true
}

/** The unknowns by interpolation between the two nodes around the value. */
function guessOnLine(
  line: SaturationLine,
  specified: 'temperature' | 'pressure',
  value: number,
  out: Float64Array,
): boolean {
  const { nodes } = line
  const values = specified === 'temperature' ? line.lnT : line.lnP
  const k = segment(values, value)
  if (k < 0) return false
  const a = nodes[k]!
  const b = nodes[k + 1]!
  const last = out.length - 1
  const ra = specified === 'temperature' ? a.du[last]! : a.dLnP
  const rb = specified === 'temperature' ? b.du[last]! : b.dLnP
  hermite(a, b, values[k]!, values[k + 1]!, ra, rb, value, out)
  return true
}

/** Index k with values[k] ≤ value ≤ values[k + 1], or −1. */
function segment(values: Float64Array, value: number): number {
  let low = 0
  let high = values.length - 1
  if (!(value >= values[low]! && value <= values[high]!)) return -1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (values[middle]! <= value) low = middle
    else high = middle
  }
  return low
}

function rising(values: readonly number[]): Float64Array {
  let end = 1
  while (end < values.length && values[end]! > values[end - 1]!) end++
  return Float64Array.from(values.slice(0, end))
}
