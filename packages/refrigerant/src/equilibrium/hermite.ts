import type { EnvelopeNode } from './envelope-node.ts'

/**
 * The unknowns at `at`, from the polynomial through the values and the tangents of nodes `first` up to `end`, as a
 * function of any s that rises or falls along the line: S, ln T or ln p.
 *
 * @param s of every node
 * @param slope ds/dS of every node, which turns the tangents du/dS into du/ds
 * @source Hermite's interpolation in Lagrange's form, *common practice*
 */
export function hermite(
  nodes: readonly EnvelopeNode[],
  s: Float64Array,
  slope: Float64Array,
  first: number,
  end: number,
  at: number,
  out: Float64Array,
): void {
  out.fill(0)
  for (let j = first; j < end; j++) {
    const sj = s[j]!
    let L = 1
    let L_s = 0
    for (let i = first; i < end; i++) {
      if (i === j) continue
      const inverse = 1 / (sj - s[i]!)
      L *= (at - s[i]!) * inverse
      L_s += inverse
    }
    const away = at - sj
    const value = L * L * (1 - 2 * away * L_s)
    const tangent = (L * L * away) / slope[j]!
    const { u, du } = nodes[j]!
    for (let k = 0; k < out.length; k++) out[k]! += value * u[k]! + tangent * du[k]!
  }
}
