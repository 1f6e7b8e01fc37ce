import type { Engine } from './engine.ts'

/** A pure fluid or a blend of fixed composition, ready to be asked for properties. */
export interface Refrigerant {
  /** As designated: `R-410A`, `R-1234ze(E)`; for a user's own blend its recipe. */
  readonly name: string
  readonly kind: 'pure' | 'blend'
  readonly components: readonly Component[]
  readonly molarMass_kg_mol: number
  /** Of the equation of state, which can differ a little from a measured critical point. */
  readonly critical: { readonly temperature_K: number; readonly pressure_Pa: number }
  /** Where states are given. Saturation ends at the lowest temperature here and at 0.998 of the critical one. */
  readonly range: {
    readonly minTemperature_K: number
    readonly maxTemperature_K: number
    readonly maxPressure_Pa: number
  }
  /** The compiled equations; of no use outside this package. */
  readonly engine: Engine
}

export interface Component {
  readonly name: string
  readonly massFraction: number
  readonly moleFraction: number
}

export function refrigerant(name: string, componentNames: readonly string[], engine: Engine): Refrigerant {
  const { limits, critical, fluid, massFractions, moleFractions } = engine
  return {
    name,
    kind: componentNames.length === 1 ? 'pure' : 'blend',
    components: componentNames.map((component, i) => ({
      name: component,
      massFraction: massFractions[i]!,
      moleFraction: moleFractions[i]!,
    })),
    molarMass_kg_mol: fluid.molarMass_kg_mol,
    critical,
    range: {
      minTemperature_K: limits.minTemperature_K,
      maxTemperature_K: limits.maxTemperature_K,
      maxPressure_Pa: limits.maxPressure_Pa,
    },
    engine,
  }
}
