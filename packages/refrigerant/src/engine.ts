import type { FluidFile } from './data-file.ts'
import { type CriticalPoint, criticalPoint } from './equilibrium/critical-point.ts'
import { traceEnvelope } from './equilibrium/envelope.ts'
import { type SaturationLine, saturationLine, solveLine } from './equilibrium/saturation-line.ts'
import {
  type CaloricState,
  caloricState,
  evaluateState,
  type FixedComposition,
  fixedComposition,
} from './mixture/fixed-composition.ts'
import { type IdealGas, idealGas } from './mixture/ideal.ts'
import { type MixtureModel, mixtureModel, type PairData } from './mixture/mixture-model.ts'

/** The compiled equations of one composition. Holds scratch memory: one engine serves one caller at a time. */
export interface Engine {
  readonly model: MixtureModel
  readonly moleFractions: Float64Array
  readonly massFractions: Float64Array
  readonly fluid: FixedComposition
  /** The ideal-gas part of each component alone, for phases of another composition. */
  readonly componentIdeals: readonly IdealGas[]
  readonly bubble: SaturationLine
  /** The same line as `bubble` for a pure fluid, whose vapour is then the incipient phase. */
  readonly dew: SaturationLine
  readonly critical: CriticalPoint
  readonly limits: Limits
  /** Subtracted from every enthalpy and entropy. */
  readonly reference: { readonly enthalpy_J_kg: number; readonly entropy_J_kgK: number }
}

export interface Limits {
  readonly minTemperature_K: number
  readonly maxTemperature_K: number
  readonly maxPressure_Pa: number
  readonly saturation: {
    readonly minTemperature_K: number
    readonly maxTemperature_K: number
    readonly minPressure_Pa: number
    readonly maxPressure_Pa: number
  }
}

/** A discharge line gets this hot; some papers stop just short of it, and their equations extend there smoothly. */
const COMMON_MAX_TEMPERATURE_K = 425
const COMMON_MAX_PRESSURE_PA = 10e6
/** Colder than any service; some blends' liquids separate in two below it. A component may be below its triple point. */
const MIN_BLEND_TEMPERATURE_K = 173.15
/** Nearer the critical point than this the two phases are refused. */
const HIGHEST_SATURATION = 0.998
/** The bubble pressure of a blend can pass over the critical pressure; saturation by pressure stops below it. */
const HIGHEST_SATURATION_PRESSURE = 0.99
const ALONE = Float64Array.of(1)
const REFERENCE_TEMPERATURE_K = 273.15
const REFERENCE_ENTHALPY_J_KG = 200_000
const REFERENCE_ENTROPY_J_KGK = 1_000

/** Undefined when no saturation line could be traced, which no composition of the listed fluids has shown. */
export function buildEngine(
  components: readonly FluidFile[],
  massFractions: Float64Array,
  pairs: readonly PairData[],
  reducingOf?: (fluid: FluidFile) => FluidFile['reducing'],
): Engine | undefined {
  const model = mixtureModel(components, pairs)
  const moleFractions = molesOf(components, massFractions)
  const fluid = fixedComposition(model, pairs, moleFractions, reducingOf)
  const limits = plainLimits(components)
  const bubbleTrace = traceEnvelope(model, moleFractions, 'bubble', limits.minTemperature_K)
  const dewTrace =
    components.length === 1 ? bubbleTrace : traceEnvelope(model, moleFractions, 'dew', limits.minTemperature_K)
  if (!bubbleTrace || !dewTrace) return undefined
  const bubble = saturationLine(model, moleFractions, bubbleTrace)
  const dew = components.length === 1 ? bubble : saturationLine(model, moleFractions, dewTrace)
  const critical =
    components.length === 1 ? pureCritical(components[0]!, fluid) : criticalPoint(bubble.nodes, dew.nodes)
  const engine = {
    model,
    moleFractions,
    massFractions,
    fluid,
    componentIdeals: components.map((one) => idealGas([one], ALONE, model.gasConstant_J_molK, reducingOf)),
    bubble,
    dew,
    critical,
    limits: { ...limits, saturation: saturationLimits(limits.minTemperature_K, critical, bubble, dew) },
    reference: { enthalpy_J_kg: 0, entropy_J_kgK: 0 },
  }
  return { ...engine, reference: referenceOf(engine) }
}

/** One state with the reference of this refrigerant; `density` molar. */
export function stateOf(engine: Engine, temperature: number, density: number, out: CaloricState): void {
  evaluateState(engine.fluid, temperature, density, out)
  out.enthalpy_J_kg -= engine.reference.enthalpy_J_kg
  out.entropy_J_kgK -= engine.reference.entropy_J_kgK
}

function molesOf(components: readonly FluidFile[], massFractions: Float64Array): Float64Array {
  const moles = massFractions.map((w, i) => w / components[i]!.molarMass_kg_mol)
  const total = moles.reduce((sum, n) => sum + n, 0)
  return moles.map((n) => n / total)
}

function plainLimits(components: readonly FluidFile[]): Omit<Limits, 'saturation'> {
  const highestMin = Math.max(...components.map(({ range }) => range.minTemperature_K))
  return {
    minTemperature_K: components.length === 1 ? highestMin : MIN_BLEND_TEMPERATURE_K,
    maxTemperature_K: Math.max(
      COMMON_MAX_TEMPERATURE_K,
      Math.min(...components.map(({ range }) => range.maxTemperature_K)),
    ),
    maxPressure_Pa: Math.max(COMMON_MAX_PRESSURE_PA, Math.min(...components.map(({ range }) => range.maxPressure_Pa))),
  }
}

function pureCritical({ critical }: FluidFile, fluid: FixedComposition): CriticalPoint {
  const state = caloricState()
  evaluateState(fluid, critical.temperature_K, critical.density_mol_m3, state)
  return { temperature_K: critical.temperature_K, pressure_Pa: state.pressure_Pa }
}

function saturationLimits(
  minTemperature: number,
  critical: CriticalPoint,
  bubble: SaturationLine,
  dew: SaturationLine,
): Limits['saturation'] {
  const coldest = Math.exp(Math.max(bubble.lnT[0]!, dew.lnT[0]!))
  const minTemperature_K = Math.max(minTemperature, coldest)
  const maxTemperature_K = HIGHEST_SATURATION * critical.temperature_K
  return {
    minTemperature_K,
    maxTemperature_K,
    minPressure_Pa: pressureAt(bubble, minTemperature_K),
    maxPressure_Pa: Math.min(
      pressureAt(bubble, maxTemperature_K),
      HIGHEST_SATURATION_PRESSURE * critical.pressure_Pa,
      Math.exp(dew.lnP[dew.lnP.length - 1]!),
    ),
  }
}

function pressureAt(line: SaturationLine, temperature: number): number {
  return solveLine(line, 'temperature', Math.log(temperature)) ? Math.exp(line.work.lnP) : Number.NaN
}

/**
 * The International Institute of Refrigeration's reference: 200 kJ/kg and 1 kJ/(kg·K) for the saturated liquid at
 * 0 °C, for a blend the liquid at its bubble point. A fluid that is supercritical there keeps its file's own offset.
 */
function referenceOf(engine: Engine): Engine['reference'] {
  const { bubble, fluid, limits } = engine
  const lnT = Math.log(REFERENCE_TEMPERATURE_K)
  const reachable =
    REFERENCE_TEMPERATURE_K < limits.saturation.maxTemperature_K && solveLine(bubble, 'temperature', lnT)
  if (!reachable) return { enthalpy_J_kg: 0, entropy_J_kgK: 0 }
  const state = caloricState()
  evaluateState(fluid, REFERENCE_TEMPERATURE_K, Math.exp(bubble.work.u[engine.moleFractions.length]!), state)
  return {
    enthalpy_J_kg: state.enthalpy_J_kg - REFERENCE_ENTHALPY_J_KG,
    entropy_J_kgK: state.entropy_J_kgK - REFERENCE_ENTROPY_J_KGK,
  }
}
