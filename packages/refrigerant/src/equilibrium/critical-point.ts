import type { EnvelopeNode } from './envelope.ts'

/** Nodes of each line nearest the critical point that the interpolation uses. */
const NODES = 4

export interface CriticalPoint {
  readonly temperature_K: number
  readonly pressure_Pa: number
}

/**
 * The critical point of a blend: the place S = 0 between the bubble line, where the given phase is the denser one, and
 * the dew line, where it is the thinner one. In S both are one smooth curve, so that a polynomial through the nodes on
 * both sides meets it without ever solving at the singular point itself.
 */
export function criticalPoint(bubble: readonly EnvelopeNode[], dew: readonly EnvelopeNode[]): CriticalPoint {
  const nodes = [...bubble.slice(-NODES), ...dew.slice(-NODES)]
  let lnT = 0
  let lnP = 0
  for (const node of nodes) {
    let weight = 1
    for (const other of nodes) if (other !== node) weight *= -other.S / (node.S - other.S)
    lnT += weight * node.u[node.u.length - 1]!
    lnP += weight * node.lnP
  }
  return { temperature_K: Math.exp(lnT), pressure_Pa: Math.exp(lnP) }
}
