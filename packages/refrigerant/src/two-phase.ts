import type { Engine } from './engine.ts'
import { solveLine } from './equilibrium/saturation-line.ts'
import { type Split, solveSplit, split } from './equilibrium/split.ts'
import { type Ends, endsOf, startSplit } from './equilibrium/split-start.ts'
import { evaluateIdeal, type IdealValues } from './mixture/ideal.ts'
import type { Phase } from './mixture/phase.ts'
import type { Refrigerant } from './refrigerant.ts'
import type { Saturation } from './saturation.ts'

/** Liquid and vapour together, as one state. */
export interface TwoPhase {
  readonly temperature_K: number
  readonly pressure_Pa: number
  readonly density_kg_m3: number
  readonly enthalpy_J_kg: number
  readonly entropy_J_kgK: number
  readonly quality: number
}

const ITERATIONS = 20
/** A flash outside the glide by more than this has found a false root, or a liquid that would separate in two. */
const GLIDE_TOLERANCE_K = 1e-4
/** Phase densities may leave the span between bubble and dew point by this factor, false roots leave it by more. */
const DENSITY_TOLERANCE = 1.15

/** The two-phase state between these bubble and dew points; undefined if no flash closed there. */
export function twoPhaseAt(
  { engine, kind }: Refrigerant,
  lines: Saturation,
  specified: 'temperature' | 'quality',
  value: number,
): TwoPhase | undefined {
  if (kind === 'pure') return lever(lines, value)
  const { bubble, dew, massFractions, model } = engine
  const pressure = lines.bubble.pressure_Pa
  const lnP = Math.log(pressure)
  if (!solveLine(bubble, 'pressure', lnP) || !solveLine(dew, 'pressure', lnP)) return undefined
  const ends = endsOf(bubble.work, dew.work, massFractions)
  const flash = split(model, massFractions)
  startSplit(flash, ends, specified, value)
  const target = specified === 'temperature' ? Math.log(value) : value
  const solved = solveSplit(flash, pressure, specified, target, ITERATIONS) && credible(flash, ends)
  return solved ? stateOfSplit(engine, flash) : undefined
}

function credible({ u, liquid, vapour }: Split, { temperature, liquid: lnL, vapour: lnV, molarMass }: Ends): boolean {
  const T = Math.exp(u[u.length - 2]!)
  const q = u[u.length - 1]!
  const inside = T > temperature[0] - GLIDE_TOLERANCE_K && T < temperature[1] + GLIDE_TOLERANCE_K
  const share = q > -1e-9 && q < 1 + 1e-9
  return inside && share && near(liquid, lnL, molarMass) && near(vapour, lnV, molarMass)
}

function near({ partial, P_density }: Phase, [a, b]: readonly [number, number], molarMass: Float64Array): boolean {
  const density = partial.reduce((sum, rho, i) => sum + rho * molarMass[i]!, 0)
  const low = Math.exp(Math.min(a, b)) / DENSITY_TOLERANCE
  const high = Math.exp(Math.max(a, b)) * DENSITY_TOLERANCE
  return P_density > 0 && density > low && density < high
}

/** The two phases of a pure fluid keep their states; only their shares change. */
function lever({ bubble, dew }: Saturation, quality: number): TwoPhase {
  const between = (a: number, b: number) => a + quality * (b - a)
  return {
    temperature_K: bubble.temperature_K,
    pressure_Pa: bubble.pressure_Pa,
    density_kg_m3: 1 / between(1 / bubble.density_kg_m3, 1 / dew.density_kg_m3),
    enthalpy_J_kg: between(bubble.enthalpy_J_kg, dew.enthalpy_J_kg),
    entropy_J_kgK: between(bubble.entropy_J_kgK, dew.entropy_J_kgK),
    quality,
  }
}

export function stateOfSplit(engine: Engine, { u, liquid, vapour, model }: Split): TwoPhase {
  const T = Math.exp(u[u.length - 2]!)
  const q = u[u.length - 1]!
  const l = byMass(engine, liquid, T)
  const v = byMass(engine, vapour, T)
  return {
    temperature_K: T,
    pressure_Pa: vapour.P * model.gasConstant_J_molK * T,
    density_kg_m3: 1 / ((1 - q) / l.density + q / v.density),
    enthalpy_J_kg: (1 - q) * l.enthalpy + q * v.enthalpy - engine.reference.enthalpy_J_kg,
    entropy_J_kgK: (1 - q) * l.entropy + q * v.entropy - engine.reference.entropy_J_kgK,
    quality: q,
  }
}

const ideal: IdealValues = { a: 0, aT: 0, aTT: 0 }

/** Density, enthalpy and entropy by mass of a phase of any composition, in the components' own reference state. */
function byMass(
  { model, componentIdeals }: Engine,
  phase: Phase,
  T: number,
): { density: number; enthalpy: number; entropy: number } {
  const R = model.gasConstant_J_molK
  let M = 0
  let a = 0
  let aT = 0
  for (const [i, x] of phase.x.entries()) {
    evaluateIdeal(componentIdeals[i]!, T, ideal)
    M += x * model.components[i]!.molarMass_kg_mol
    a += x * (ideal.a + Math.log(x))
    aT += x * ideal.aT
  }
  return {
    density: phase.density * M,
    enthalpy: (R * T * (phase.P / phase.density + aT + phase.aT)) / M,
    entropy: (R * (aT + phase.aT - a - Math.log(phase.density) - phase.a)) / M,
  }
}
