import type { FluidFile, ResidualPart } from '../data-file.ts'
import { D, DD, DT, residual, STRIDE, T, TT } from '../helmholtz/residual.ts'
import { type TauBank, type TermTable, tauBank, termTable, type WeightedParts } from '../helmholtz/term-table.ts'
import { evaluateIdeal, type IdealGas, type IdealValues, idealGas } from './ideal.ts'
import type { MixtureModel, PairData } from './mixture-model.ts'
import { reduce, reduced } from './reduce.ts'

/**
 * A mixture whose composition does not change, merged into one residual function: what single-phase states need. Five
 * components shrink from about a hundred groups of terms to about forty.
 */
export interface FixedComposition {
  readonly molarMass_kg_mol: number
  readonly gasConstant_J_molK: number
  readonly reducingTemperature_K: number
  readonly reducingDensity_mol_m3: number
  readonly table: TermTable
  readonly ideal: IdealGas
  readonly bank: TauBank
  readonly alpha: Float64Array
  readonly idealValues: IdealValues
}

export function fixedComposition(
  model: MixtureModel,
  pairs: readonly PairData[],
  x: Float64Array,
  reducingOf?: (fluid: FluidFile) => FluidFile['reducing'],
): FixedComposition {
  const { components, departures, gasConstant_J_molK, reducing } = model
  const parts: { weight: number; part: ResidualPart }[] = components.map((fluid, i) => ({
    weight: x[i]!,
    part: fluid.residual,
  }))
  for (const { i, j, weight } of departures) {
    const pair = pairs[(i * (2 * components.length - i - 1)) / 2 + j - i - 1]!
    parts.push({ weight: x[i]! * x[j]! * weight, part: pair.departure! })
  }
  const merged: WeightedParts = parts
  const table = termTable([merged])
  const Tr = reduced(components.length)
  const vr = reduced(components.length)
  reduce(reducing.temperature, x, Tr)
  reduce(reducing.volume, x, vr)
  return {
    molarMass_kg_mol: components.reduce((sum, fluid, i) => sum + x[i]! * fluid.molarMass_kg_mol, 0),
    gasConstant_J_molK,
    reducingTemperature_K: Tr.value,
    reducingDensity_mol_m3: 1 / vr.value,
    table,
    ideal: idealGas(components, x, gasConstant_J_molK, reducingOf),
    bank: tauBank(table),
    alpha: new Float64Array(STRIDE),
    idealValues: { a: 0, aT: 0, aTT: 0 },
  }
}

/** Everything a single-phase state has, by mass; h and s without a reference state. */
export interface CaloricState {
  pressure_Pa: number
  enthalpy_J_kg: number
  entropy_J_kgK: number
  cp_J_kgK: number
  speedOfSound_m_s: number
  /** ∂p/∂ln ρ at constant temperature. */
  stiffness_Pa: number
  /** −∂ln ρ/∂ln T at constant pressure: 1 for the ideal gas. */
  expansion: number
}

export const caloricState = (): CaloricState => ({
  pressure_Pa: 0,
  enthalpy_J_kg: 0,
  entropy_J_kgK: 0,
  cp_J_kgK: 0,
  speedOfSound_m_s: 0,
  stiffness_Pa: 0,
  expansion: 0,
})

/** @param density molar, mol/m³ */
export function evaluateState(fluid: FixedComposition, temperature: number, density: number, out: CaloricState): void {
  const { gasConstant_J_molK: R, molarMass_kg_mol: M, alpha: a, idealValues: i } = fluid
  const tau = fluid.reducingTemperature_K / temperature
  residual(fluid.table, fluid.bank, density / fluid.reducingDensity_mol_m3, tau, a)
  evaluateIdeal(fluid.ideal, temperature, i)
  const Z = 1 + a[D]!
  const compressibility = Z + a[DD]!
  const thermal = Z - a[DT]!
  const cv = i.aT + a[T]! - i.aTT - a[TT]!
  const RT = R * temperature
  out.pressure_Pa = density * RT * Z
  out.stiffness_Pa = density * RT * compressibility
  out.expansion = thermal / compressibility
  out.enthalpy_J_kg = (RT * (Z + i.aT + a[T]!)) / M
  out.entropy_J_kgK = (R * (i.aT + a[T]! - i.a - Math.log(density) - a[0]!)) / M
  out.cp_J_kgK = (R * (cv + (thermal * thermal) / compressibility)) / M
  out.speedOfSound_m_s = Math.sqrt((RT / M) * (compressibility + (thermal * thermal) / cv))
}

/** Pressure and its derivative by ln ρ, for density iterations: only the density factors are computed again. */
export interface PressureAt {
  p: number
  dp: number
}

export function evaluatePressure(fluid: FixedComposition, temperature: number, density: number, out: PressureAt): void {
  const { alpha: a } = fluid
  const tau = fluid.reducingTemperature_K / temperature
  residual(fluid.table, fluid.bank, density / fluid.reducingDensity_mol_m3, tau, a)
  const scale = density * fluid.gasConstant_J_molK * temperature
  out.p = scale * (1 + a[D]!)
  out.dp = scale * (1 + a[D]! + a[DD]!)
}
