import type { Saturated } from './refrigerant/properties.ts'
import { type TubeFlow, type VoidFraction, voidLaw } from './void-fraction.ts'

/**
 * Mean density of a two-phase stretch in which the quality runs evenly from one value to another, as it does under an
 * even heat flux: ∫ [ε ρg + (1 − ε) ρf] dx / (x₂ − x₁), by Gauss and Legendre's rule. Zivi's has a closed form, which
 * a test holds against the rule.
 *
 * @param from,to quality, 0 to 1, in any order
 * @returns kg/m³, between the densities of vapour and liquid
 */
export function meanDensity(kind: VoidFraction, from: number, to: number, at: Saturated, flow: TubeFlow): number {
  const { vapourDensity_kg_m3: rhoG, liquidDensity_kg_m3: rhoF } = at
  const law = voidLaw(kind, at, flow)
  // The slip law bends most at low quality: u² crowds the nodes there.
  const a = Math.sqrt(Math.max(from, 0))
  const b = Math.sqrt(Math.max(to, 0))
  if (Math.abs(b - a) < 1e-9) return rhoF + law(from) * (rhoG - rhoF)
  let sum = 0
  let weights = 0
  for (let i = 0; i < NODES.length; i++) {
    const u = a + (b - a) * NODES[i]!
    const weight = WEIGHTS[i]! * u
    sum += weight * law(u * u)
    weights += weight
  }
  return rhoF + (sum / weights) * (rhoG - rhoF)
}

/** Gauss and Legendre's rule of order six on 0 … 1. */
const NODES = [
  0.033765242898424, 0.169395306766868, 0.380690406958402, 0.619309593041598, 0.830604693233132, 0.966234757101576,
]
const WEIGHTS = [
  0.085662246189585, 0.180380786524069, 0.233956967286346, 0.233956967286346, 0.180380786524069, 0.085662246189585,
]
