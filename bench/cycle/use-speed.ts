import {
  chargingChart,
  conditions,
  learn,
  type Nameplate,
  type Observation,
  propertiesOf,
  SOUND,
  size,
  solve,
} from '../../packages/cycle/src/index.ts'
import { findRefrigerant } from '../../packages/refrigerant/src/index.ts'
import { tables } from './draw-state.ts'
import { processorMilliseconds } from './time.ts'

const kelvin = (F: number) => (F + 459.67) / 1.8

/** What is asked of the twin at a visit, on an invented three-ton unit, in processor time. */
export function useSpeed(yardstick_ms: number) {
  const plate: Nameplate = {
    properties: tables('R-410A'),
    application: 'comfort-cooling',
    device: 'fixed-orifice',
    capacity_W: 10_550,
    charge_kg: 3.2,
    efficiency: { kind: 'cop', cop: 3.3 },
  }
  const sized = size(plate)
  const weather = conditions(305, 298, 291)
  if (!sized.ok || !weather.ok) throw new Error('the sample system does not size')
  const [system, at] = [sized.value, weather.value]
  const state = solve(system, at, { ...SOUND, charge_kg: 2.8 })
  if (state.kind !== 'steady') throw new Error('the sample state does not solve')
  const { superheat_K, subcooling_K, evaporating_K, condensing_K } = state.readings
  const first: Observation = {
    conditions: at,
    added_kg: 0,
    readings: {
      superheat_K: { value: superheat_K + 1, sd: 1 },
      subcooling_K: { value: subcooling_K - 0.5, sd: 1 },
      evaporating_K: { value: evaporating_K, sd: 0.8 },
      condensing_K: { value: condensing_K + 0.6, sd: 0.8 },
    },
  }
  const outdoor = Array.from({ length: 27 }, (_, i) => kelvin(62 + 2 * i))
  const wetBulb = Array.from({ length: 13 }, (_, i) => kelvin(52 + 2 * i))
  const health = { ...SOUND, charge_kg: 3.2 }
  const blend = findRefrigerant('R-448A')
  if (!blend.ok) throw new Error('R-448A is not listed')
  const timed = (use: string, job: () => unknown, rounds = 40) => {
    const ms = processorMilliseconds(job, rounds)
    return { use, ms, over: ms / yardstick_ms }
  }
  return [
    timed('charging chart, 27 by 13', () =>
      chargingChart(system, health, 'superheat_K', { kind: 'wet-bulb' }, outdoor, wetBulb),
    ),
    timed('learning from one set of readings', () => learn(system, [first])),
    timed('learning from two sets', () => learn(system, [first, { ...first, added_kg: 0.2 }])),
    timed('sizing from a nameplate', () => size(plate)),
    timed('tables of a blend, built once', () => propertiesOf(blend.value), 1),
  ]
}
