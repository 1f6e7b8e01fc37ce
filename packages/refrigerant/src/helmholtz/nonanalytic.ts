import type { NonanalyticTerms } from '../data-file.ts'
import { exponential } from './exponential.ts'

/** Terms smaller than exp(−this) relative to the rest are below the last digit of a double. */
const NEGLIGIBLE_EXPONENT = 45
/** On δ = 1 the derivatives are limits of the form 0·∞; a step aside of this size is far below any tolerance. */
const STEP_ASIDE = 1e-9

/**
 * The nonanalytic terms n·Δ^b·δ·ψ of the carbon dioxide equation, added to the six values at `offset`.
 * θ = (1 − τ) + A·[(δ − 1)²]^(1/2β), Δ = θ² + B·[(δ − 1)²]^a, ψ = exp(−C(δ − 1)² − D(τ − 1)²).
 *
 * @source Span and Wagner 1996, table 32 and eq. 6.1 [span1996]
 */
export function addNonanalytic(
  terms: NonanalyticTerms,
  weight: number,
  delta: number,
  tau: number,
  out: Float64Array,
  offset: number,
): void {
  const x = Math.abs(delta - 1) < STEP_ASIDE ? STEP_ASIDE : delta - 1
  const y = tau - 1
  const x2 = x * x
  const lnX2 = Math.log(x2)
  let solved = -1
  let theta = 0
  let lnDelta = 0
  let u1 = 0
  let Delta_d = 0
  let Delta_dd = 0
  for (let k = 0; k < terms.n.length; k++) {
    const C = terms.C[k]!
    const E = terms.D[k]!
    const exponent = C * x2 + E * y * y
    if (exponent > NEGLIGIBLE_EXPONENT) continue
    if (!sameDelta(terms, k, solved)) {
      solved = k
      const a = terms.a[k]!
      const power = 1 / terms.beta[k]!
      const u = terms.A[k]! * exponential(0.5 * power * lnX2)
      const v = terms.B[k]! * exponential(a * lnX2)
      theta = u - y
      lnDelta = Math.log(theta * theta + v)
      u1 = (power * u) / x
      const u2 = ((power - 1) * u1) / x
      const v1 = (2 * a * v) / x
      Delta_d = 2 * theta * u1 + v1
      Delta_dd = 2 * (u1 * u1 + theta * u2) + ((2 * a - 1) * v1) / x
    }

    const n = weight * terms.n[k]!
    const b = terms.b[k]!
    const psi = exponential(-exponent)
    const F = exponential(b * lnDelta)
    const inverse = exponential(-lnDelta)
    const F1 = b * F * inverse
    const F2 = (b - 1) * F1 * inverse
    const F_d = F1 * Delta_d
    const F_dd = F1 * Delta_dd + F2 * Delta_d * Delta_d
    const F_t = -2 * theta * F1
    const F_tt = 2 * F1 + 4 * theta * theta * F2
    const F_dt = -2 * u1 * F1 - 2 * theta * F2 * Delta_d

    const p_d = -2 * C * x
    const p_dd = (2 * C * x2 - 1) * 2 * C
    const p_t = -2 * E * y
    const p_tt = (2 * E * y * y - 1) * 2 * E
    const p_dt = p_d * p_t

    const s = n * psi
    const f = s * delta * F
    const f_d = s * (F * (1 + delta * p_d) + F_d * delta)
    const f_dd = s * (F * (2 * p_d + delta * p_dd) + 2 * F_d * (1 + delta * p_d) + F_dd * delta)
    const f_t = s * delta * (F_t + F * p_t)
    const f_tt = s * delta * (F_tt + 2 * F_t * p_t + F * p_tt)
    const f_dt = s * (F * (p_t + delta * p_dt) + delta * F_d * p_t + F_t * (1 + delta * p_d) + F_dt * delta)

    out[offset]! += f
    out[offset + 1]! += delta * f_d
    out[offset + 2]! += tau * f_t
    out[offset + 3]! += delta * (delta * f_dd + f_d)
    out[offset + 4]! += delta * tau * f_dt
    out[offset + 5]! += tau * (tau * f_tt + f_t)
  }
}

/** Terms of the paper share Δ, whose powers are the dear part. */
function sameDelta({ a, beta, A, B }: NonanalyticTerms, k: number, solved: number): boolean {
  return a[k] === a[solved] && beta[k] === beta[solved] && A[k] === A[solved] && B[k] === B[solved]
}
