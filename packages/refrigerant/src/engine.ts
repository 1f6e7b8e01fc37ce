import type { FluidFile } from './data-file.ts'
import { type CriticalPoint, criticalPoint, linesMeet } from './equilibrium/critical-point.ts'
import { traceEnvelope } from './equilibrium/envelope.ts'
import { type SaturationLine, saturationLine } from './equilibrium/saturation-line.ts'
import { type Limits, saturationLimits, stateLimits } from './limits.ts'
import {
  type CaloricState,
  caloricState,
  evaluateState,
  type FixedComposition,
  fixedComposition,
} from './mixture/fixed-composition.ts'
import { type IdealGas, idealGas } from './mixture/ideal.ts'
import { type MixtureModel, mixtureModel, type PairData } from './mixture/mixture-model.ts'
import { type ReferenceState, referenceState } from './reference-state.ts'

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
  readonly reference: ReferenceState
}

const ALONE = Float64Array.of(1)

/**
 * @param reducingOf see `idealGas`
 * @returns undefined when the bubble and the dew line could not be followed until they meet: some compositions of
 * one's own have liquids that separate in two, no designated blend has
 */
export function buildEngine(
  components: readonly FluidFile[],
  massFractions: Float64Array,
  pairs: readonly PairData[],
  reducingOf?: (fluid: FluidFile) => FluidFile['reducing'],
): Engine | undefined {
  const model = mixtureModel(components, pairs)
  const moleFractions = molesOf(components, massFractions)
  const fluid = fixedComposition(model, pairs, moleFractions, reducingOf)
  const limits = stateLimits(components)
  const pure = components.length === 1
  const bubbleTrace = traceEnvelope(model, moleFractions, 'bubble', limits.minTemperature_K)
  const dewTrace = pure ? bubbleTrace : traceEnvelope(model, moleFractions, 'dew', limits.minTemperature_K)
  if (!bubbleTrace || !dewTrace || !(pure || linesMeet(bubbleTrace.nodes, dewTrace.nodes))) return undefined
  const bubble = saturationLine(model, moleFractions, bubbleTrace)
  const dew = pure ? bubble : saturationLine(model, moleFractions, dewTrace)
  const critical = pure ? pureCritical(components[0]!, fluid) : criticalPoint(bubble.nodes, dew.nodes)
  const saturation = saturationLimits(limits.minTemperature_K, critical, bubble, dew)
  if (!(saturation.maxPressure_Pa > saturation.minPressure_Pa)) return undefined
  return {
    model,
    moleFractions,
    massFractions,
    fluid,
    componentIdeals: components.map((one) => idealGas([one], ALONE, model.gasConstant_J_molK, reducingOf)),
    bubble,
    dew,
    critical,
    limits: { ...limits, saturation },
    reference: referenceState(fluid, bubble, saturation.maxTemperature_K),
  }
}

/** One state with the reference of this refrigerant; `density` molar. */
export function stateOf(engine: Engine, temperature: number, density: number, out: CaloricState): void {
  evaluateState(engine.fluid, temperature, density, out)
  out.enthalpy_J_kg -= engine.reference.enthalpy_J_kg
  out.entropy_J_kgK -= engine.reference.entropy_J_kgK
}

export function molesOf(components: readonly FluidFile[], massFractions: Float64Array): Float64Array {
  const moles = massFractions.map((w, i) => w / components[i]!.molarMass_kg_mol)
  const total = moles.reduce((sum, n) => sum + n, 0)
  return moles.map((n) => n / total)
}

function pureCritical({ critical }: FluidFile, fluid: FixedComposition): CriticalPoint {
  const state = caloricState()
  evaluateState(fluid, critical.temperature_K, critical.density_mol_m3, state)
  return { temperature_K: critical.temperature_K, pressure_Pa: state.pressure_Pa }
}
