import type { Properties, Readings } from '../../packages/cycle/src/index.ts'
import type { Random } from './random.ts'

/** Standard uncertainties that a technician states for such instruments: half of the limits below, which are 95 %. */
export interface ReadBack {
  readonly superheat_K: { value: number; sd: number }
  readonly subcooling_K: { value: number; sd: number }
  readonly evaporating_K: { value: number; sd: number }
  readonly condensing_K: { value: number; sd: number }
  readonly dischargeTemperature_K: { value: number; sd: number }
  readonly supplyAir_K: { value: number; sd: number }
}

/**
 * One set of instruments with its own constant errors, and a little scatter from reading to reading: suction gauge
 * ±3.5 psi, liquid gauge ±7 psi (California RA3.2, 2013), thermometers ±1.3 °F (2008), pipe clamps drawn 5 % to 10 %
 * towards the air (*common practice*).
 */
export function instruments(random: Random): (properties: Properties, truth: Readings, outdoor_K: number) => ReadBack {
  const PSI = 6894.757
  const offset = (limit: number) => random.normal(0, limit / 2)
  const gauges = { suction: offset(3.5 * PSI), liquid: offset(7 * PSI) }
  const thermometers = { suction: offset(0.72), liquid: offset(0.72), discharge: offset(2), supply: offset(0.72) }
  const pull = random.uniform(0, 0.06)
  const scatter = () => random.normal(0, 0.15)
  return (properties, truth, outdoor_K) => {
    const clamp = (T: number, error: number) => T + pull * (outdoor_K - T) + error + scatter()
    const low = properties.saturated(truth.suctionPressure_Pa + gauges.suction)
    const high = properties.saturated(truth.liquidPressure_Pa + gauges.liquid)
    const slope = (at: { pressure_Pa: number; dew_K: number }, dp: number) =>
      properties.saturated(at.pressure_Pa + dp).dew_K - at.dew_K
    const [lowSd, highSd] = [slope(low, 1.75 * PSI), slope(high, 3.5 * PSI)]
    return {
      superheat_K: {
        value: clamp(truth.suctionTemperature_K, thermometers.suction) - low.dew_K,
        sd: Math.hypot(0.6, lowSd),
      },
      subcooling_K: {
        value: high.bubble_K - clamp(truth.liquidTemperature_K, thermometers.liquid),
        sd: Math.hypot(0.4, highSd),
      },
      evaporating_K: { value: low.dew_K, sd: lowSd },
      condensing_K: { value: high.dew_K, sd: highSd },
      dischargeTemperature_K: { value: clamp(truth.dischargeTemperature_K, thermometers.discharge), sd: 2 },
      supplyAir_K: { value: truth.supplyAir_K + thermometers.supply + scatter(), sd: 0.5 },
    }
  }
}
