import { D, DD, DT, residual, STRIDE, T, TT, VALUE } from '../helmholtz/residual.ts'
import { type TauBank, tauBank } from '../helmholtz/term-table.ts'
import type { MixtureModel } from './mixture-model.ts'
import { type Reduced, reduce, reduced } from './reduce.ts'

/**
 * One phase of a mixture in isochoric variables: partial densities ρ_i and temperature. A workspace that is filled
 * again and again, so that no solver allocates. Every derivative is by a logarithm: of ρ_j, of the density at fixed
 * composition, of T.
 */
export interface Phase {
  /** ρ_i, mol/m³: set by the caller before `evaluatePhase`. */
  readonly partial: Float64Array
  density: number
  readonly x: Float64Array
  /** ln(f_i/RT), where f_i is the fugacity. */
  readonly lnF: Float64Array
  readonly lnF_T: Float64Array
  readonly lnF_density: Float64Array
  /** ∂ln f_i/∂ln ρ_j in row i. */
  readonly lnF_partial: Float64Array
  /** αʳ and T·αʳ, from which the enthalpy and entropy of the phase follow. */
  a: number
  aT: number
  /** p/RT, mol/m³. */
  P: number
  P_T: number
  P_density: number
  readonly P_partial: Float64Array
  readonly scratch: {
    readonly bank: TauBank
    readonly alpha: Float64Array
    readonly temperature: Reduced
    readonly volume: Reduced
    readonly phi: Float64Array
    readonly phiD: Float64Array
    readonly phiT: Float64Array
    readonly q: Float64Array
    readonly dDelta: Float64Array
    readonly dTau: Float64Array
  }
}

/** @param bank shared by two phases that always have the same τ, so that its temperature factors are computed once */
export function phaseOf(model: MixtureModel, bank: TauBank = tauBank(model.table)): Phase {
  const count = model.components.length
  const array = () => new Float64Array(count)
  return {
    partial: array(),
    density: 0,
    x: array(),
    lnF: array(),
    lnF_T: array(),
    lnF_density: array(),
    lnF_partial: new Float64Array(count * count),
    a: 0,
    aT: 0,
    P: 0,
    P_T: 0,
    P_density: 0,
    P_partial: array(),
    scratch: {
      bank,
      alpha: new Float64Array(model.table.functionCount * STRIDE),
      temperature: reduced(count),
      volume: reduced(count),
      phi: array(),
      phiD: array(),
      phiT: array(),
      q: array(),
      dDelta: array(),
      dTau: array(),
    },
  }
}

/**
 * Fills a phase from its partial densities and the temperature.
 *
 * With φ(n) = n·αʳ at fixed δ and τ, ln(f_i/RT) = ln ρ_i + φ_i + Dαʳ·δ_i + Tαʳ·τ_i, where δ_i = n·∂ln δ/∂n_i and
 * τ_i = n·∂ln τ/∂n_i come from the reducing functions. The derivatives by composition are only needed for a phase
 * whose composition is unknown: `composition` false leaves `lnF_partial` and `P_partial` as they were.
 */
export function evaluatePhase(model: MixtureModel, phase: Phase, temperature: number, composition: boolean): void {
  const count = model.components.length
  const { partial, x, lnF, lnF_T, lnF_density, lnF_partial, P_partial, scratch } = phase
  const { bank, alpha, temperature: Tr, volume: vr, phi, phiD, phiT, q, dDelta, dTau } = scratch
  let density = 0
  for (let i = 0; i < count; i++) density += partial[i]!
  for (let i = 0; i < count; i++) x[i] = partial[i]! / density
  reduce(model.reducing.temperature, x, Tr)
  reduce(model.reducing.volume, x, vr)
  residual(model.table, bank, density * vr.value, Tr.value / temperature, alpha)

  // Sums over the components: αʳ and, with q_i = Σ_j x_j·F_ij·αʳ_ij and Q = ½Σ x_i·q_i, φ_i = αʳ_i + q_i − Q.
  let a = 0
  let aD = 0
  let aT = 0
  let aDD = 0
  let aDT = 0
  let aTT = 0
  for (let i = 0; i < count; i++) {
    const o = i * STRIDE
    const xi = x[i]!
    a += xi * alpha[o + VALUE]!
    aD += xi * alpha[o + D]!
    aT += xi * alpha[o + T]!
    aDD += xi * alpha[o + DD]!
    aDT += xi * alpha[o + DT]!
    aTT += xi * alpha[o + TT]!
    phi[i] = alpha[o + VALUE]!
    phiD[i] = alpha[o + D]!
    phiT[i] = alpha[o + T]!
    q[i] = 0
    dDelta[i] = vr.first[i]! / vr.value - 1
    dTau[i] = Tr.first[i]! / Tr.value - 2
  }
  const { departures } = model
  let Q = 0
  let QD = 0
  let QT = 0
  for (let k = 0; k < departures.length; k++) {
    const { i, j, weight, index } = departures[k]!
    const o = index * STRIDE
    const xi = x[i]!
    const xj = x[j]!
    const w = xi * xj * weight
    Q += w * alpha[o + VALUE]!
    QD += w * alpha[o + D]!
    QT += w * alpha[o + T]!
    aDD += w * alpha[o + DD]!
    aDT += w * alpha[o + DT]!
    aTT += w * alpha[o + TT]!
    q[i]! += xj * weight * alpha[o + VALUE]!
    q[j]! += xi * weight * alpha[o + VALUE]!
    phiD[i]! += xj * weight * alpha[o + D]!
    phiD[j]! += xi * weight * alpha[o + D]!
    phiT[i]! += xj * weight * alpha[o + T]!
    phiT[j]! += xi * weight * alpha[o + T]!
  }
  aD += QD
  aT += QT
  for (let i = 0; i < count; i++) {
    phi[i]! += q[i]! - Q
    phiD[i]! -= QD
    phiT[i]! -= QT
    lnF[i] = Math.log(partial[i]!) + phi[i]! + aD * dDelta[i]! + aT * dTau[i]!
    lnF_density[i] = 1 + phiD[i]! + aDD * dDelta[i]! + aDT * dTau[i]!
    lnF_T[i] = -(phiT[i]! + aDT * dDelta[i]! + aTT * dTau[i]!)
  }
  phase.density = density
  phase.a = a + Q
  phase.aT = aT
  phase.P = density * (1 + aD)
  phase.P_T = -density * aDT
  phase.P_density = density * (1 + aD + aDD)
  if (!composition) return

  // n·∂²(nαʳ)/∂n_i∂n_j, symmetric; the second derivatives of the reducing functions enter here and nowhere else.
  for (let j = 0; j < count; j++) {
    const dj = dDelta[j]!
    const tj = dTau[j]!
    const xj = x[j]!
    const aD_j = phiD[j]! - aD + aDD * dj + aDT * tj
    const aT_j = phiT[j]! - aT + aDT * dj + aTT * tj
    P_partial[j] = density * xj * (1 + aD + aD_j)
    for (let i = 0; i <= j; i++) {
      const ij = i * count + j
      const dDelta_j = vr.second[ij]! / vr.value + (dDelta[i]! + 1) * -dj
      const dTau_j = Tr.second[ij]! / Tr.value + (dTau[i]! + 2) * (-1 - tj)
      const phi_j = 2 * Q - q[i]! - q[j]!
      const G =
        phi_j + phiD[i]! * dj + phiT[i]! * tj + aD_j * dDelta[i]! + aT_j * dTau[i]! + aD * dDelta_j + aT * dTau_j
      lnF_partial[ij] = G * xj
      lnF_partial[j * count + i] = G * x[i]!
    }
  }
  for (let k = 0; k < departures.length; k++) {
    const { i, j, weight, index } = departures[k]!
    const w = weight * alpha[index * STRIDE + VALUE]!
    lnF_partial[i * count + j]! += w * x[j]!
    lnF_partial[j * count + i]! += w * x[i]!
  }
  for (let i = 0; i < count; i++) lnF_partial[i * count + i]! += 1
}
