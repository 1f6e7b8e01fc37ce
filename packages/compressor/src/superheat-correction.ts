import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'

/** Suction gas at one return-gas temperature, from the refrigerant's properties at the suction dew pressure. */
export interface SuctionGas {
  readonly specificVolume_m3_kg: number
  /** Rise of enthalpy from this gas to the discharge pressure at constant entropy. */
  readonly isentropicRise_J_kg: number
  /** Enthalpy of this gas above that of the liquid before the expansion device; needed for a capacity only. */
  readonly refrigeratingEffect_J_kg?: number
}

/** By what the rated values are multiplied; each with its relative standard uncertainty. */
export interface SuperheatCorrection {
  readonly flow: number
  readonly power: number
  /** Absent where a refrigerating effect is missing. */
  readonly capacity?: number
  readonly u: number
}

/**
 * Corrects ratings for return gas other than that of the rating: ṁ/ṁ₀ = 1 + F (v₀/v − 1) with F = 0.75, and
 * W/W₀ = (ṁ/ṁ₀)(Δh_s/Δh_s₀). The capacity follows the flow and the refrigerating effect, by its definition.
 *
 * @param rated gas that the ratings are for, `actual` the gas as found, both at the same suction and discharge pressure;
 *   specific volumes within a factor of 2 of each other
 * @returns factors; else the property that is out of range
 * @source Dabiri & Rice 1981, ASHRAE Trans. 87(2), 771–782, as cited in an open heat-pump model. READ there. How well
 *   F is known (± 0.15 as a standard uncertainty): common practice
 */
export function superheatCorrection(rated: SuctionGas, actual: SuctionGas): Result<SuperheatCorrection, Problem> {
  const volumes = rated.specificVolume_m3_kg / actual.specificVolume_m3_kg
  const rises = actual.isentropicRise_J_kg / rated.isentropicRise_J_kg
  const problem =
    outOfRange('specific volume of the suction gas', actual.specificVolume_m3_kg, 1e-4, 100, 'm³/kg') ??
    outOfRange('isentropic rise of enthalpy', actual.isentropicRise_J_kg, 1, 1e7, 'J/kg') ??
    outOfRange('specific volume, rated over actual', volumes, 0.5, 2, '') ??
    outOfRange('isentropic rise, actual over rated', rises, 0.5, 2, '')
  if (problem) return fail(problem)
  const flow = 1 + F * (volumes - 1)
  const factors = { flow, power: flow * rises, u: F_UNCERTAINTY * Math.abs(volumes - 1) }
  const [before, after] = [rated.refrigeratingEffect_J_kg, actual.refrigeratingEffect_J_kg]
  if (before === undefined || after === undefined) return ok(factors)
  const effects = after / before
  const beyond = outOfRange('refrigerating effect, actual over rated', effects, 0.5, 2, '')
  return beyond ? fail(beyond) : ok({ ...factors, capacity: flow * effects })
}

const F = 0.75
const F_UNCERTAINTY = 0.15
