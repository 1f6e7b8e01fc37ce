import {
  chargingChart,
  conditions,
  learn,
  type Observation,
  propertiesOf,
  SOUND,
  size,
  solve,
} from '../../packages/cycle/src/index.ts'
import { findRefrigerant } from '../../packages/refrigerant/src/index.ts'
import { seeded } from '../population/random.ts'
import { DEVICES, drawState, tables } from './draw-state.ts'

/**
 * Times of the twin, as processor time of this process where the machine is shared, beside a fixed piece of arithmetic
 * that makes runs on different machines comparable: ratios carry over, milliseconds do not.
 */
const yardstick = perCall(200, arithmetic)
console.log(`yardstick: a million square roots and sums take ${(yardstick * 1e3).toFixed(2)} ms`)

for (const device of DEVICES) {
  const random = seeded(11)
  const states = Array.from({ length: 400 }, () => drawState(device, random))
  const once = () => states.map(({ system, at, health }) => time(() => solve(system, at, health)))
  for (let i = 0; i < 5; i++) once()
  const processor = perCall(5, once) / states.length
  const best = Array.from({ length: 5 }, once).reduce((a, b) => a.map((t, i) => Math.min(t, b[i]!)))
  best.sort((a, b) => a - b)
  report(`${device}: solve, mean of wide-range states`, processor)
  console.log(`    median ${ms(best[200]!)}, p99 ${ms(best[396]!)} (best of five, wall clock)`)
}

const orifice = size({
  properties: tables('R-410A'),
  application: 'comfort-cooling',
  device: 'fixed-orifice',
  capacity_W: 10_550,
  charge_kg: 3.2,
  efficiency: { kind: 'cop', cop: 3.3 },
})
const rating = conditions(305, 298, 291)
if (!orifice.ok || !rating.ok) throw new Error('the sample system does not size')
const { value: system } = orifice
const { value: at } = rating
const F = (f: number) => (f + 459.67) / 1.8
const outdoor = Array.from({ length: 27 }, (_, i) => F(62 + 2 * i))
const wetBulbs = Array.from({ length: 13 }, (_, i) => F(52 + 2 * i))
report(
  'charging chart, 27 by 13',
  perCall(10, () =>
    chargingChart(system, { ...SOUND, charge_kg: 3.2 }, 'superheat_K', { kind: 'wet-bulb' }, outdoor, wetBulbs),
  ),
)

const state = solve(system, at, { ...SOUND, charge_kg: 2.8 })
if (state.kind !== 'steady') throw new Error('the sample state does not solve')
const { superheat_K, subcooling_K, evaporating_K, condensing_K } = state.readings
const observation: Observation = {
  conditions: at,
  added_kg: 0,
  readings: {
    superheat_K: { value: superheat_K + 1, sd: 1 },
    subcooling_K: { value: subcooling_K - 0.5, sd: 1 },
    evaporating_K: { value: evaporating_K, sd: 0.8 },
    condensing_K: { value: condensing_K + 0.6, sd: 0.8 },
  },
}
report(
  'learning from one set of readings',
  perCall(100, () => learn(system, [observation])),
)
report(
  'learning from two sets',
  perCall(100, () => learn(system, [observation, { ...observation, added_kg: 0.2 }])),
)
report(
  'sizing from a nameplate',
  perCall(100, () =>
    size({
      properties: system.properties,
      application: 'comfort-cooling',
      device: 'fixed-orifice',
      capacity_W: 10_550,
      charge_kg: 3.2,
      efficiency: { kind: 'cop', cop: 3.3 },
    }),
  ),
)
const found = findRefrigerant('R-448A')
if (found.ok)
  report(
    'property tables of one blend, built once',
    perCall(1, () => propertiesOf(found.value)),
  )

function report(what: string, seconds: number): void {
  console.log(`${what}: ${ms(seconds)}, ${(seconds / yardstick).toPrecision(3)} yardsticks`)
}

function ms(seconds: number): string {
  return `${(seconds * 1e3).toFixed(3)} ms`
}

function time(work: () => unknown): number {
  const start = process.hrtime.bigint()
  work()
  return Number(process.hrtime.bigint() - start) / 1e9
}

/** Processor seconds of one call. */
function perCall(calls: number, work: () => unknown): number {
  work()
  const start = process.cpuUsage()
  for (let i = 0; i < calls; i++) work()
  const { user, system: kernel } = process.cpuUsage(start)
  return (user + kernel) / 1e6 / calls
}

function arithmetic(): number {
  let sum = 0
  for (let i = 0; i < 1e6; i++) sum += Math.sqrt(i)
  return sum
}
