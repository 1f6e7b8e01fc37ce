import type { ResidualPart } from '../data-file.ts'

/**
 * One term of a residual part, split into a factor of the density and a factor of the temperature:
 * n · [δ^d·exp(−φ(δ))] · [τ^t·exp(ψ(τ))]. Every published kind but the nonanalytic one has this form, and only because
 * of it can a density iteration keep all temperature factors.
 */
export interface Term {
  readonly n: number
  readonly d: number
  readonly t: number
  readonly decay: Decay
  readonly warp: Warp
}

/** φ(δ): nothing, g·δ^l, or η(δ − ε)². */
export type Decay =
  | { readonly kind: 'none' }
  | { readonly kind: 'power'; readonly g: number; readonly l: number }
  | { readonly kind: 'bell'; readonly eta: number; readonly epsilon: number }

/** ψ(τ): nothing, −β(τ − γ)², −τ^m, or 1/(b + β(τ − γ)²). */
export type Warp =
  | { readonly kind: 'none' }
  | { readonly kind: 'bell'; readonly beta: number; readonly gamma: number }
  | { readonly kind: 'power'; readonly m: number }
  | { readonly kind: 'gao'; readonly b: number; readonly beta: number; readonly gamma: number }

const none = { kind: 'none' } as const
const power = (g: number, l: number): Decay => (l === 0 ? none : { kind: 'power', g, l })

/** The separable terms of a residual part, in the order of the file. */
export function separableTerms(part: ResidualPart): Term[] {
  const terms: Term[] = []
  const { power: p, exponential: e, gaussian: g, doubleExponential: x, gao: a, gerg: r } = part
  for (const [k, n] of (p?.n ?? []).entries()) {
    terms.push({ n, d: p!.d[k]!, t: p!.t[k]!, decay: power(1, p!.l[k]!), warp: none })
  }
  for (const [k, n] of (e?.n ?? []).entries()) {
    terms.push({ n, d: e!.d[k]!, t: e!.t[k]!, decay: power(e!.g[k]!, e!.l[k]!), warp: none })
  }
  for (const [k, n] of (g?.n ?? []).entries()) {
    const decay: Decay = { kind: 'bell', eta: g!.eta[k]!, epsilon: g!.epsilon[k]! }
    terms.push({ n, d: g!.d[k]!, t: g!.t[k]!, decay, warp: { kind: 'bell', beta: g!.beta[k]!, gamma: g!.gamma[k]! } })
  }
  for (const [k, n] of (x?.n ?? []).entries()) {
    const m = x!.m[k]!
    terms.push({ n, d: x!.d[k]!, t: x!.t[k]!, decay: power(1, x!.l[k]!), warp: m === 0 ? none : { kind: 'power', m } })
  }
  for (const [k, n] of (a?.n ?? []).entries()) {
    const decay: Decay = { kind: 'bell', eta: a!.eta[k]!, epsilon: a!.epsilon[k]! }
    const warp: Warp = { kind: 'gao', b: a!.b[k]!, beta: a!.beta[k]!, gamma: a!.gamma[k]! }
    terms.push({ n, d: a!.d[k]!, t: a!.t[k]!, decay, warp })
  }
  for (const [k, n] of (r?.n ?? []).entries()) {
    terms.push(gerg(n, r!.d[k]!, r!.t[k]!, r!.eta[k]!, r!.epsilon[k]!, r!.beta[k]!, r!.gamma[k]!))
  }
  return terms
}

/** exp(−η(δ − ε)² − β(δ − γ)) by completing the square, so that it needs no kind of its own. */
function gerg(n: number, d: number, t: number, eta: number, epsilon: number, beta: number, gamma: number): Term {
  if (eta === 0) return { n: n * Math.exp(beta * gamma), d, t, decay: power(beta, 1), warp: none }
  const shift = beta / (2 * eta)
  const scale = Math.exp(beta * shift - eta * shift ** 2 - beta * (epsilon - gamma))
  return { n: n * scale, d, t, decay: { kind: 'bell', eta, epsilon: epsilon - shift }, warp: none }
}
