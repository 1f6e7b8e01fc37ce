import { exponential } from './exponential.ts'
import { addNonanalytic } from './nonanalytic.ts'
import type { Warp } from './term.ts'
import type { TauBank, TermTable } from './term-table.ts'

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
  const { termStart, n, t, bellTerm, bellBeta, bellGamma, oddWarps } = table
  const { exponent, q, q1 } = table.scratch
  const { c, c1, c2 } = bank
  const lnTau = Math.log(tau)
  for (let k = 0; k < t.length; k++) exponent[k] = t[k]! * lnTau
  for (let b = 0; b < bellTerm.length; b++) {
    const k = bellTerm[b]!
    const beta = bellBeta[b]!
    const x = tau - bellGamma[b]!
    exponent[k]! -= beta * x * x
    q[k] = t[k]! - 2 * beta * tau * x
    q1[k] = -2 * beta * tau * (tau + x)
  }
  for (let b = 0; b < oddWarps.length; b++) {
    const { term, warp } = oddWarps[b]!
    addWarp(table, term, warp, tau)
  }
  for (let k = 0; k < n.length; k++) exponent[k] = n[k]! * exponential(exponent[k]!)
  let k = 0
  for (let g = 0; g < c.length; g++) {
    let s = 0
    let s1 = 0
    let s2 = 0
    for (const end = termStart[g + 1]!; k < end; k++) {
      const value = exponent[k]!
      const qk = q[k]!
      s += value
      s1 += value * qk
      s2 += value * (qk * qk + q1[k]!)
    }
    c[g] = s
    c1[g] = s1
    c2[g] = s2
  }
  bank.tau = tau
}

function addWarp({ t, scratch }: TermTable, k: number, warp: Warp, tau: number): void {
  const { exponent, q, q1 } = scratch
  if (warp.kind === 'power') {
    const tauM = tau ** warp.m
    exponent[k]! -= tauM
    q[k] = t[k]! - warp.m * tauM
    q1[k] = -warp.m * warp.m * tauM
  } else if (warp.kind === 'gao') {
    const { b, beta, gamma } = warp
    const x = tau - gamma
    const u = 1 / (b + beta * x * x)
    const v = 2 * beta * tau * x * u
    exponent[k]! += u
    q[k] = t[k]! - v * u
    q1[k] = 2 * v * v * u - 2 * beta * tau * (tau + x) * u * u
  }
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
    decay[e] = exponential(-phi)
    decay1[e] = -l * phi
    decay2[e] = -l * l * phi
  }
  for (let e = firstBell; e < decayCount; e++) {
    const eta = decayA[e]!
    const epsilon = decayB[e]!
    const x = delta - epsilon
    decay[e] = exponential(-eta * x * x)
    decay1[e] = -2 * eta * delta * x
    decay2[e] = -2 * eta * delta * (delta + x)
  }
}
