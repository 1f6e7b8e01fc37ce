import type { ReadingSet } from './case.ts'
import type { Fluid } from './fluid.ts'
import type { Running } from './operate.ts'
import type { Random } from './random.ts'
import type { Weather } from './unit.ts'

/** What is at rest when the circuit is equalised. */
export interface AtRest {
  readonly pressure_Pa: number
  readonly ambient_K: number
}

/** Writes down a running unit as one technician with one bag of tools would. */
export type Write = (running: Running, weather: Weather, rest: AtRest, wanted: 'ordinary' | 'everything') => ReadingSet

const PSI = 6894.757

/**
 * One visit's instruments, with errors that stay for the whole visit and a little scatter from reading to reading.
 *
 * Limits are read as 95 %: gauges ±3.5 psi and ±7 psi when digital (California RA3.2, 2013), class 1 or 1.6 of span
 * when dials (EN 837-1), and dials are read to the nearest mark; thermometers ±(0.1 % + 1.3 °F) (RA3.2, 2008); clamps
 * on pipes ±0.75 K and pulled up to 3 % towards the air, one in seven of them 5 % to 15 % (*common practice*); wet
 * bulb reads high in slow air (ASTM E337 as quoted); watts 2 %, or 5 % where a power factor was assumed.
 * One visit in four was written down before everything had settled.
 */
export function drawToolBag(fluid: Fluid, random: Random): Write {
  const { uniform, normal, chance } = random
  const isDigital = chance(0.6)
  const accuracy = uniform(0.5, 1.2)
  const span = fluid.name === 'R-22' || fluid.name === 'R-134a' || fluid.name === 'R-407C' ? [120, 500] : [250, 800]
  const dialClass = chance(0.5) ? 0.01 : 0.016
  const limits = isDigital ? [3.5 * accuracy, 7 * accuracy] : [dialClass * span[0]!, dialClass * span[1]!]
  const gauge = (k: 0 | 1) => normal(0, (limits[k]! * PSI) / 2)
  const mark = isDigital ? [100, 100] : [PSI, 5 * PSI]
  const gauges = [gauge(0), gauge(1)]
  const thermometer = () => normal(0, 0.39)
  const clamp = () => ({ error: normal(0, 0.37), pull: chance(1 / 7) ? uniform(0.05, 0.15) : uniform(0, 0.03) })
  const [suction, liquid, discharge, drierIn] = [clamp(), clamp(), clamp(), clamp()]
  // Some move one clamp from one side of the drier to the other: its error is then the same.
  const drierOut = chance(0.5) ? { ...clamp(), error: drierIn.error } : clamp()
  const air = {
    outdoor: thermometer(),
    indoor: thermometer(),
    wet: thermometer(),
    leaving: thermometer(),
    supply: thermometer(),
  }
  // Air leaving a coil is not one temperature: where the probe hung decides.
  const place = { leaving: normal(1, 0.08), supply: normal(1, 0.04) }
  const slowAir = chance(0.35) ? uniform(0.02, 0.14) : 0
  const watts = normal(1, chance(0.5) ? 0.01 : 0.025)
  const unsettled = chance(0.25) ? uniform(0.01, 0.1) : 0
  const wasHot = chance(0.5) ? 1 : -1
  // What this technician does not read he does not read the second time either.
  const habit = {
    liquidPressure_Pa: chance(0.95),
    liquidLine_K: chance(0.95),
    dischargeLine_K: chance(0.7),
    condenserLeavingAir_K: chance(0.7),
    supplyAir_K: chance(0.7),
    drier: chance(0.7),
    compressorPower_W: chance(0.7),
    power_W: chance(0.7),
  }

  return (now, weather, rest, wanted) => {
    const scatter = () => normal(0, 0.12)
    const written = (T: number) => Math.round((T + scatter()) * 10) / 10
    const pressure = (p: number, k: 0 | 1) => {
      const settling = p * unsettled * 0.12 * wasHot
      return toMark(p + settling + gauges[k]! + normal(0, 0.003 * p), mark[k]!)
    }
    const pipe = (T: number, { error, pull }: ReturnType<typeof clamp>, around_K: number, start_K: number) =>
      written(T + unsettled * (start_K - T) + pull * (around_K - T) + error)
    const { outdoor_K, returnAir_K, returnWetBulb_K } = weather
    const isTaken = (key: keyof typeof habit) => wanted === 'everything' || habit[key]
    const taken = (key: keyof ReadingSet & keyof typeof habit, value: () => number) =>
      isTaken(key) ? { [key]: value() } : {}
    const leaving = outdoor_K + (now.condenserLeaving_K - outdoor_K) * place.leaving
    const supply = returnAir_K - (returnAir_K - now.supply_K) * place.supply
    const box = outdoor_K + 5
    return {
      outdoor_K: written(outdoor_K + air.outdoor),
      returnAir_K: written(returnAir_K + air.indoor),
      returnWetBulb_K: written(returnWetBulb_K + slowAir * (returnAir_K - returnWetBulb_K) + air.wet),
      suctionPressure_Pa: pressure(now.suction.p_Pa, 0),
      suctionLine_K: pipe(now.suction_K, suction, outdoor_K, outdoor_K),
      ...taken('liquidPressure_Pa', () => pressure(now.liquid_Pa, 1)),
      ...taken('liquidLine_K', () => pipe(now.liquid_K, liquid, outdoor_K, outdoor_K)),
      ...taken('dischargeLine_K', () => pipe(now.discharge_K, discharge, box, outdoor_K + 20)),
      ...taken('condenserLeavingAir_K', () => written(leaving + air.leaving)),
      ...taken('supplyAir_K', () => written(supply + unsettled * (returnAir_K - supply) + air.supply)),
      ...(isTaken('drier')
        ? {
            drierInlet_K: pipe(now.drierInlet_K, drierIn, outdoor_K, outdoor_K),
            drierOutlet_K: pipe(now.drierOutlet_K, drierOut, outdoor_K, outdoor_K),
          }
        : {}),
      ...taken('compressorPower_W', () => Math.round((now.compressor_W * watts * normal(1, 0.004)) / 10) * 10),
      ...taken('power_W', () => Math.round((now.power_W * watts * normal(1, 0.004)) / 10) * 10),
      ...(wanted === 'everything'
        ? {
            standstill: {
              pressure_Pa: toMark(rest.pressure_Pa + gauges[1]! + normal(0, 0.004 * rest.pressure_Pa), mark[1]!),
              ambient_K: written(rest.ambient_K + air.outdoor),
            },
          }
        : {}),
    }
  }
}

const toMark = (x: number, mark: number) => Math.round(Math.round(x / mark) * mark)
