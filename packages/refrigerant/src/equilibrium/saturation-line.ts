import type { MixtureModel } from '../mixture/mixture-model.ts'
import type { Envelope } from './envelope.ts'
import type { EnvelopeNode } from './envelope-node.ts'
import { hermite } from './hermite.ts'
import { type Incipient, incipient, solveIncipient } from './incipient.ts'

/** A traced bubble or dew line, ready to be solved at any temperature or pressure. */
export interface SaturationLine {
  readonly nodes: readonly EnvelopeNode[]
  /** ln T and ln p of the nodes, each as far as it rises: a line that turns back is only used up to its turn. */
  readonly lnT: Float64Array
  readonly lnP: Float64Array
  /** Their derivatives by S. */
  readonly dLnT: Float64Array
  readonly dLnP: Float64Array
  readonly work: Incipient
}

/** More than the interpolation between two nodes can be wrong by: a solution this far off is on another line. */
const MAX_DEPARTURE = 0.05
const ITERATIONS = 12
/** Nodes on each side of a value that its first guess is drawn through: enough that one step of Newton is often all. */
const REACH = 2

export function saturationLine(model: MixtureModel, z: Float64Array, { nodes, side }: Envelope): SaturationLine {
  return {
    nodes,
    lnT: rising(nodes.map(({ u }) => u[u.length - 1]!)),
    lnP: rising(nodes.map(({ lnP }) => lnP)),
    dLnT: Float64Array.from(nodes, ({ du }) => du[du.length - 1]!),
    dLnP: Float64Array.from(nodes, ({ dLnP }) => dLnP),
    work: incipient(model, z, side),
  }
}

/** Solves the line at ln T or ln p; the answer is in `line.work`. False outside the traced part or without convergence. */
export function solveLine(line: SaturationLine, specified: 'temperature' | 'pressure', value: number): boolean {
  const { u, du: guess } = line.work
  if (!guessOnLine(line, specified, value, guess)) return false
  u.set(guess)
  return solveIncipient(line.work, specified, value, ITERATIONS) > 0 && near(u, guess)
}

/** Whether the solution in `line.work` lies on the traced line; a false root lies elsewhere. */
export function onLine(line: SaturationLine, specified: 'temperature' | 'pressure', value: number): boolean {
  const { u, du: guess } = line.work
  return guessOnLine(line, specified, value, guess) && near(u, guess)
}

function near(u: Float64Array, guess: Float64Array): boolean {
  for (let k = 0; k < guess.length; k++) {
    if (!(Math.abs(u[k]! - guess[k]!) < MAX_DEPARTURE)) return false
  }
  return true
}

/** The unknowns by interpolation between the nodes around the value. */
function guessOnLine(
  line: SaturationLine,
  specified: 'temperature' | 'pressure',
  value: number,
  out: Float64Array,
): boolean {
  const byTemperature = specified === 'temperature'
  const values = byTemperature ? line.lnT : line.lnP
  const k = segment(values, value)
  if (k < 0) return false
  const first = Math.max(0, k + 1 - REACH)
  const end = Math.min(values.length, k + 1 + REACH)
  hermite(line.nodes, values, byTemperature ? line.dLnT : line.dLnP, first, end, value, out)
  if (byTemperature) out[out.length - 1] = value
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
