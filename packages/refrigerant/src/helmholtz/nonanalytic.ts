import type { NonanalyticTerms } from '../data-file.ts'
import { exponential } from './exponential.ts'

/**
 * A term with ψ = e^−E is left out beyond this E. Its largest share in the six values is that in TT, about
 * |n|·δ·Δ^b·4·D·E·τ²·e^−E: up to δ = 4 and τ = 2 less than 0.73·4·900·4·275·60·4·e^−60 = 6·10⁻¹⁸, and falling with E.
 * A pressure has these values added to 1, a logarithm of a fugacity too.
 */
const NEGLIGIBLE_EXPONENT = 60
/** On δ = 1 the derivatives are limits of the form 0·∞; a step aside of this size is far below any tolerance. */
const STEP_ASIDE = 1e-9

/**
 * The nonanalytic terms n·Δ^b·δ·ψ of the carbon dioxide equation, added to the six values at `offset`.
 * θ = (1 − τ) + A·[(δ − 1)²]^(1/2β), Δ = θ² + B·[(δ − 1)²]^a, ψ = exp(−C(δ − 1)² − D(τ − 1)²).
 * Each is f = n·exp(L) with L = b·ln Δ + ln δ + ln ψ, so that Df = f·DL and DDf = f·((DL)² + DDL) with the operators
 * of `residual`; G is ln Δ.
 *
 * @param out the six values in the order of `residual`
 * @param negligible the exponent E beyond which a term is left out
 * @source Span and Wagner 1996, table 32 and eq. 6.1 [span1996]
 */
export function addNonanalytic(
  terms: NonanalyticTerms,
  weight: number,
  delta: number,
  tau: number,
  out: Float64Array,
  offset: number,
  negligible = NEGLIGIBLE_EXPONENT,
): void {
  const x = Math.abs(delta - 1) < STEP_ASIDE ? STEP_ASIDE : delta - 1
  const y = tau - 1
  const x2 = x * x
  const w = delta / x
  const lnX2 = Math.log(x2)
  let solved = -1
  let lnDelta = 0
  let G_D = 0
  let G_T = 0
  let G_DD = 0
  let G_DT = 0
  let G_TT = 0
  for (let k = 0; k < terms.n.length; k++) {
    const C = terms.C[k]!
    const E = terms.D[k]!
    const exponent = C * x2 + E * y * y
    if (exponent > negligible) continue
    if (!sameDelta(terms, k, solved)) {
      solved = k
      const a2 = 2 * terms.a[k]!
      const power = 1 / terms.beta[k]!
      const u = terms.A[k]! * exponential(0.5 * power * lnX2)
      const v = terms.B[k]! * exponential(0.5 * a2 * lnX2)
      const u_D = power * w * u
      const u_DD = (1 + (power - 1) * w) * u_D
      const v_D = a2 * w * v
      const v_DD = (1 + (a2 - 1) * w) * v_D
      const theta = u - y
      const Delta = theta * theta + v
      const inverse = 1 / Delta
      lnDelta = Math.log(Delta)
      G_D = inverse * (2 * theta * u_D + v_D)
      G_T = inverse * -2 * tau * theta
      G_DD = inverse * (2 * (u_D * u_D + theta * u_DD) + v_DD) - G_D * G_D
      G_DT = inverse * -2 * tau * u_D - G_D * G_T
      G_TT = inverse * 2 * tau * (tau - theta) - G_T * G_T
    }
    const b = terms.b[k]!
    const L_D = 1 + b * G_D - 2 * C * delta * x
    const L_T = b * G_T - 2 * E * tau * y
    const f = weight * terms.n[k]! * delta * exponential(b * lnDelta - exponent)
    out[offset]! += f
    out[offset + 1]! += f * L_D
    out[offset + 2]! += f * L_T
    out[offset + 3]! += f * (L_D * L_D + b * G_DD - 2 * C * delta * (delta + x))
    out[offset + 4]! += f * (L_D * L_T + b * G_DT)
    out[offset + 5]! += f * (L_T * L_T + b * G_TT - 2 * E * tau * (tau + y))
  }
}

/** Terms of the paper share Δ, whose powers are the dear part. */
function sameDelta({ a, beta, A, B }: NonanalyticTerms, k: number, solved: number): boolean {
  return a[k] === a[solved] && beta[k] === beta[solved] && A[k] === A[solved] && B[k] === B[solved]
}
