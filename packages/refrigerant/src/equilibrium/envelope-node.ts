import { type Incipient, tangent } from './incipient.ts'

/** A solved point of a bubble or dew line, with the direction in which the line goes on. */
export interface EnvelopeNode {
  /** ln ρ_given − ln ρ_incipient. */
  readonly S: number
  readonly lnP: number
  /** d(ln p)/dS. */
  readonly dLnP: number
  /** The unknowns of `Incipient`, the last of them ln T. */
  readonly u: Float64Array
  readonly du: Float64Array
}

/** The point at which `work` has just been solved. */
export function nodeOf(work: Incipient): EnvelopeNode {
  const dLnP = tangent(work, 'spread')
  const { u, du, given, other } = work
  return {
    S: Math.log(given.density / other.density),
    lnP: work.lnP,
    dLnP,
    u: u.slice(),
    du: du.slice(),
  }
}

/**
 * Cubic through two nodes as a function of any s with known ds/dS: s = S, ln T or ln p. `s0`, `s1` are its values and
 * `r0`, `r1` its slopes at the nodes.
 */
export function hermite(
  a: EnvelopeNode,
  b: EnvelopeNode,
  s0: number,
  s1: number,
  r0: number,
  r1: number,
  s: number,
  out: Float64Array,
): void {
  const h = s1 - s0
  const t = (s - s0) / h
  const t2 = t * t
  const h01 = t2 * (3 - 2 * t)
  const h00 = 1 - h01
  const h10 = (t * (1 - t) * (1 - t) * h) / r0
  const h11 = (t2 * (t - 1) * h) / r1
  for (let k = 0; k < out.length; k++) {
    out[k] = h00 * a.u[k]! + h10 * a.du[k]! + h01 * b.u[k]! + h11 * b.du[k]!
  }
}
