import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { type Compressor, compressor, type VolumetricCompressor } from '../components/compressor.ts'
import type { Saturated } from '../refrigerant/properties.ts'
import type { VapourState } from '../refrigerant/vapour-table.ts'
import type { Habits } from './habits.ts'
import type { CompressorType, Nameplate } from './nameplate.ts'
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
  const run = (machine: Compressor) => compressor(machine, properties, suction, condensing, gas, gasEnthalpy, 0)
  if (!compressorMap) {
    const type = compressorType ?? habits.compressorType
    const one = unitCompressor(type, habits, bestEfficiency)
    const { flow_kg_s, power_W } = run(one)
    const scale = flow / flow_kg_s
    const constant = habits.constantPower[type]
    return ok({
      ...one,
      sweep_m3_s: scale,
      bestEfficiency: bestEfficiency / (1 - constant),
      constant_W: constant * scale * power_W,
    })
  }
  const scale = flow / run(compressorMap).flow_kg_s
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

/** One that sweeps 1 m³/s, all of its losses in its efficiency. */
export function unitCompressor(type: CompressorType, habits: Habits, bestEfficiency: number): VolumetricCompressor {
  return {
    kind: 'volumetric',
    sweep_m3_s: 1,
    clearance: habits.clearance[type],
    bestEfficiency,
    bestRatio: habits.bestRatio,
    bend: habits.efficiencyBend[type],
    constant_W: 0,
    shellHeat: habits.shellHeat[type],
    heatLoss: habits.shellLoss,
  }
}
