import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { type Compressor, compressor } from '../components/compressor.ts'
import type { Saturated } from '../refrigerant/properties.ts'
import type { VapourState } from '../refrigerant/vapour-table.ts'
import type { Habits } from './habits.ts'
import type { Nameplate } from './nameplate.ts'
import type { RatingPoint } from './rating-point.ts'

/** A map that differs more than this from the flow of the nameplate belongs to another compressor. */
const MAP_AGREEMENT = 0.15

/** A compressor that pumps the rated flow at the rated state; a given map must do so within 15 % and is then scaled. */
export function sizeCompressor(
  { properties, compressorMap, compressorType }: Nameplate,
  habits: Habits,
  { condensing, bestEfficiency }: RatingPoint,
  suction: Saturated,
  gas: VapourState,
  gasEnthalpy: number,
  flow: number,
): Result<Compressor, Problem> {
  const pumped = (machine: Compressor) =>
    compressor(machine, properties, suction, condensing, gas, gasEnthalpy, 0).flow_kg_s
  if (!compressorMap) {
    const one: Compressor = {
      kind: 'volumetric',
      sweep_m3_s: 1,
      clearance: habits.clearance[compressorType ?? habits.compressorType],
      bestEfficiency,
      bestRatio: habits.bestRatio,
      heatLoss: habits.shellLoss,
    }
    return ok({ ...one, sweep_m3_s: flow / pumped(one) })
  }
  const scale = flow / pumped(compressorMap)
  if (!(Math.abs(Math.log(scale)) <= Math.log(1 + MAP_AGREEMENT))) {
    return fail({
      kind: 'out-of-range',
      field: 'mass flow of the compressor map at the rating point',
      value: flow / scale,
      min: flow / (1 + MAP_AGREEMENT),
      max: flow * (1 + MAP_AGREEMENT),
      unit: 'kg/s',
    })
  }
  return ok({
    ...compressorMap,
    flowFactor: compressorMap.flowFactor * scale,
    powerFactor: compressorMap.powerFactor * scale,
  })
}
