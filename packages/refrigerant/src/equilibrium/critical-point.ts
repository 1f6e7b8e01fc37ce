import type { EnvelopeNode } from './envelope-node.ts'

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

/** Largest spread at the end of a trace that still counts as the neighbourhood of the critical point. */
const NEAR = 0.1
const SAME_LN_T = 0.05
const SAME_LN_P = 0.2

/** Whether both lines were followed into the same critical point. */
export function linesMeet(bubble: readonly EnvelopeNode[], dew: readonly EnvelopeNode[]): boolean {
  const b = bubble.at(-1)!
  const d = dew.at(-1)!
  const lnT = b.u.length - 1
  return (
    Math.abs(b.S) < NEAR &&
    Math.abs(d.S) < NEAR &&
    Math.abs(b.u[lnT]! - d.u[lnT]!) < SAME_LN_T &&
    Math.abs(b.lnP - d.lnP) < SAME_LN_P
  )
}
