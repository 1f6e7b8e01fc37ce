import type { Engine } from './engine.ts'
import { solveLine } from './equilibrium/saturation-line.ts'
import { type Split, solveSplit, split } from './equilibrium/split.ts'
import { evaluateIdeal, idealGas } from './mixture/ideal.ts'
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

const DIRECT_ITERATIONS = 20
/** When the direct start fails, the flash is followed from the bubble point in this many steps. */
const STEPS = 24

/** The two-phase state between these bubble and dew points; undefined if the flash did not close. */
export function twoPhaseAt(
  { engine, kind }: Refrigerant,
  lines: Saturation,
  specified: 'temperature' | 'quality',
  value: number,
): TwoPhase | undefined {
  const { bubble, dew } = lines
  if (kind === 'pure') return lever(lines, value)
  const flash = split(engine.model, engine.massFractions)
  const target = specified === 'temperature' ? Math.log(value) : value
  const glide = dew.temperature_K - bubble.temperature_K
  const share = specified === 'temperature' ? (value - bubble.temperature_K) / glide : value
  const ends = endPoints(engine, bubble.pressure_Pa)
  if (!ends) return undefined
  startBetween(flash, ends, share)
  if (solveSplit(flash, bubble.pressure_Pa, specified, target, DIRECT_ITERATIONS)) return stateOfSplit(engine, flash)
  return followed(engine, flash, ends, specified, value, bubble.pressure_Pa)
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

/** The unknowns of the split at the bubble and at the dew point. */
function endPoints(engine: Engine, pressure: number): { first: Float64Array; last: Float64Array } | undefined {
  const { bubble, dew, moleFractions } = engine
  const count = moleFractions.length
  const first = new Float64Array(2 * count + 2)
  const last = new Float64Array(2 * count + 2)
  if (!solveLine(bubble, 'pressure', Math.log(pressure))) return undefined
  if (!solveLine(dew, 'pressure', Math.log(pressure))) return undefined
  const b = bubble.work.u
  const d = dew.work.u
  for (let i = 0; i < count; i++) {
    const lnZ = Math.log(moleFractions[i]!)
    first[i] = b[count]! + lnZ
    first[count + i] = b[i]!
    last[i] = d[i]!
    last[count + i] = d[count]! + lnZ
  }
  first[2 * count] = b[count + 1]!
  last[2 * count] = d[count + 1]!
  last[2 * count + 1] = 1
  return { first, last }
}

function startBetween({ u }: Split, { first, last }: { first: Float64Array; last: Float64Array }, share: number): void {
  for (let k = 0; k < u.length; k++) u[k] = first[k]! + share * (last[k]! - first[k]!)
}

/** From the bubble point in small steps of temperature or quality, each starting where the last one ended. */
function followed(
  engine: Engine,
  flash: Split,
  ends: { first: Float64Array; last: Float64Array },
  specified: 'temperature' | 'quality',
  value: number,
  pressure: number,
): TwoPhase | undefined {
  flash.u.set(ends.first)
  const from = specified === 'temperature' ? Math.exp(ends.first[ends.first.length - 2]!) : 0
  for (let k = 1; k <= STEPS; k++) {
    const here = from + ((value - from) * k) / STEPS
    const target = specified === 'temperature' ? Math.log(here) : here
    if (!solveSplit(flash, pressure, specified, target, DIRECT_ITERATIONS)) return undefined
  }
  return stateOfSplit(engine, flash)
}

function stateOfSplit(engine: Engine, { u, liquid, vapour, model }: Split): TwoPhase {
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

/** Density, enthalpy and entropy by mass of a phase of any composition, in the components' own reference state. */
function byMass({ model }: Engine, phase: Phase, T: number): { density: number; enthalpy: number; entropy: number } {
  const R = model.gasConstant_J_molK
  const ideal = { a: 0, aT: 0, aTT: 0 }
  evaluateIdeal(idealGas(model.components, phase.x, R), T, ideal)
  const M = model.components.reduce((sum, fluid, i) => sum + phase.x[i]! * fluid.molarMass_kg_mol, 0)
  return {
    density: phase.density * M,
    enthalpy: (R * T * (phase.P / phase.density + ideal.aT + phase.aT)) / M,
    entropy: (R * (ideal.aT + phase.aT - ideal.a - Math.log(phase.density) - phase.a)) / M,
  }
}
