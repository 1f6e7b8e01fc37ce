import { addNonanalytic } from './nonanalytic.ts'
import { type TauBank, type TermTable, WARP } from './term-table.ts'

/**
 * Where a function's six values stand in the output, counted from 6·k: αʳ and its derivatives by the logarithmic
 * operators D = δ∂/∂δ and T = τ∂/∂τ. With them a term B(δ)·C(τ) gives all six by a few multiplications, and the
 * derivatives by ln ρ and ln T, which every solver here works in, need no conversion.
 */
export const VALUE = 0
export const D = 1
export const T = 2
export const DD = 3
export const DT = 4
export const TT = 5
export const STRIDE = 6

/** Evaluates every function of the table at (δ, τ) into `out`; temperature factors are kept in `bank`. */
export function residual(table: TermTable, bank: TauBank, delta: number, tau: number, out: Float64Array): void {
  if (bank.tau !== tau) setTau(table, bank, tau)
  setDelta(table, delta)
  const { functionCount, groupStart, groupPower, groupDecay } = table
  const { powers, decay, decay1, decay2 } = table.scratch
  const { c, c1, c2 } = bank
  for (let k = 0; k < functionCount; k++) {
    let a = 0
    let aD = 0
    let aT = 0
    let aDD = 0
    let aDT = 0
    let aTT = 0
    const end = groupStart[k + 1]!
    for (let g = groupStart[k]!; g < end; g++) {
      const d = groupPower[g]!
      const e = groupDecay[g]!
      const B = powers[d]! * decay[e]!
      const q = d + decay1[e]!
      const BC = B * c[g]!
      const BC1 = B * c1[g]!
      a += BC
      aD += BC * q
      aDD += BC * (q * q + decay2[e]!)
      aT += BC1
      aDT += BC1 * q
      aTT += B * c2[g]!
    }
    const o = k * STRIDE
    out[o] = a
    out[o + D] = aD
    out[o + T] = aT
    out[o + DD] = aDD
    out[o + DT] = aDT
    out[o + TT] = aTT
  }
  const { nonanalytic } = table
  for (let k = 0; k < nonanalytic.length; k++) {
    const { index, weight, terms } = nonanalytic[k]!
    addNonanalytic(terms, weight, delta, tau, out, index * STRIDE)
  }
}

/** Temperature factors: C = Σ n·τ^t·e^ψ; T acts on each term as multiplication by t + Tψ. */
function setTau(table: TermTable, bank: TauBank, tau: number): void {
  const { termStart, n, t, warpKind, warp } = table
  const { c, c1, c2 } = bank
  const lnTau = Math.log(tau)
  const groupCount = c.length
  for (let g = 0; g < groupCount; g++) {
    let s = 0
    let s1 = 0
    let s2 = 0
    const end = termStart[g + 1]!
    for (let k = termStart[g]!; k < end; k++) {
      let exponent = t[k]! * lnTau
      let q = t[k]!
      let q1 = 0
      const kind = warpKind[k]!
      if (kind === WARP.bell) {
        const beta = warp[3 * k]!
        const gamma = warp[3 * k + 1]!
        exponent -= beta * (tau - gamma) * (tau - gamma)
        q -= 2 * beta * tau * (tau - gamma)
        q1 = -2 * beta * tau * (2 * tau - gamma)
      } else if (kind === WARP.power) {
        const m = warp[3 * k]!
        const tauM = Math.exp(m * lnTau)
        exponent -= tauM
        q -= m * tauM
        q1 = -m * m * tauM
      } else if (kind === WARP.gao) {
        const beta = warp[3 * k]!
        const gamma = warp[3 * k + 1]!
        const u = 1 / (warp[3 * k + 2]! + beta * (tau - gamma) * (tau - gamma))
        const v = 2 * beta * tau * (tau - gamma) * u
        exponent += u
        q -= v * u
        q1 = 2 * v * v * u - 2 * beta * tau * (2 * tau - gamma) * u * u
      }
      const value = n[k]! * Math.exp(exponent)
      s += value
      s1 += value * q
      s2 += value * (q * q + q1)
    }
    c[g] = s
    c1[g] = s1
    c2[g] = s2
  }
  bank.tau = tau
}

/** Density factors: powers δ^d and, for each decay, e^−φ, −Dφ and −DDφ. */
function setDelta(table: TermTable, delta: number): void {
  const { decayCount, firstBell, decayA, decayB } = table
  const { powers, decay, decay1, decay2 } = table.scratch
  let power = 1
  const last = powers.length
  for (let d = 0; d < last; d++) {
    powers[d] = power
    power *= delta
  }
  decay[0] = 1
  for (let e = 1; e < firstBell; e++) {
    const l = decayB[e]!
    let phi = decayA[e]!
    for (let i = 0; i < l; i++) phi *= delta
    decay[e] = Math.exp(-phi)
    decay1[e] = -l * phi
    decay2[e] = -l * l * phi
  }
  for (let e = firstBell; e < decayCount; e++) {
    const eta = decayA[e]!
    const epsilon = decayB[e]!
    const x = delta - epsilon
    decay[e] = Math.exp(-eta * x * x)
    decay1[e] = -2 * eta * delta * x
    decay2[e] = -2 * eta * delta * (delta + x)
  }
}
