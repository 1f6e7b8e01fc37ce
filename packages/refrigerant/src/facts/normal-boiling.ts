import { molesOf } from '../engine.ts'
import { traceToPressure } from '../equilibrium/envelope.ts'
import type { Side } from '../equilibrium/incipient.ts'
import { saturationLine, solveLine } from '../equilibrium/saturation-line.ts'
import { stateLimits } from '../limits.ts'
import { type MixtureModel, mixtureModel } from '../mixture/mixture-model.ts'
import { pairsOf } from '../pair-data.ts'
import type { Recipe } from '../recipe.ts'
import type { Fact } from './fact.ts'

export interface Boiling {
  readonly bubble_K: number
  readonly dew_K: number
  readonly glide_K: number
}

const STANDARD_ATMOSPHERE_PA = 101_325

/**
 * Bubble and dew point at one standard atmosphere, the same that `saturationAtPressure` gives. A list of all
 * refrigerants asks for nothing else, so each line is followed to that pressure only, which is a short way.
 *
 * @returns undefined where a pair has no published parameters, and below the lowest temperature of the refrigerant
 */
export function normalBoiling({ fluids, massFractions }: Recipe): Fact<Boiling> | undefined {
  const pairs = pairsOf(fluids)
  if (pairs.kind === 'missing') return undefined
  const model = mixtureModel(fluids, pairs.pairs)
  const moleFractions = molesOf(fluids, Float64Array.from(massFractions))
  const bubble_K = boilingPoint(model, moleFractions, 'bubble')
  const dew_K = fluids.length === 1 ? bubble_K : boilingPoint(model, moleFractions, 'dew')
  if (!(bubble_K >= stateLimits(fluids).minTemperature_K && dew_K > 0)) return undefined
  const source = 'computed from the equations of state at 101 325 Pa'
  return { value: { bubble_K, dew_K, glide_K: dew_K - bubble_K }, source, confirmed: true }
}

function boilingPoint(model: MixtureModel, moleFractions: Float64Array, side: Side): number {
  const trace = traceToPressure(model, moleFractions, side, STANDARD_ATMOSPHERE_PA)
  if (!trace) return Number.NaN
  const line = saturationLine(model, moleFractions, trace)
  if (!solveLine(line, 'pressure', Math.log(STANDARD_ATMOSPHERE_PA))) return Number.NaN
  return Math.exp(line.work.u[moleFractions.length + 1]!)
}
