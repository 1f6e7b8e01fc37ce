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
