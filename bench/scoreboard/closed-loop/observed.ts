import { conditions, type Observation } from '../../../packages/cycle/src/index.ts'
import { asTwinReads, type Calibration } from '../../../packages/diagnosis/src/index.ts'
import type { Plate, ReadingSet } from '../../population/case.ts'
import { measured, propertiesNamed } from '../judges/measured.ts'

/**
 * Readings as the twin learns from them: without what it is known to read too low, and with the standard uncertainties
 * that a technician states for common instruments: half of the regulation's limits for gauges and thermometers, clamps and
 * discharge line *common practice*.
 *
 * @source California RA3.2 (2013): ±3.5 psi suction, ±7 psi liquid; (2008): ±1.3 °F
 */
export function observed(
  plate: Plate,
  readings: ReadingSet,
  added_kg: number,
  { devices }: Calibration,
): Observation | undefined {
  const at = conditions(readings.outdoor_K, readings.returnAir_K, readings.returnWetBulb_K)
  if (!at.ok) return undefined
  const now = measured({ plate, readings })
  const { saturated } = propertiesNamed(plate.refrigerant)
  const sdOf = (pressure: number | undefined, gauge_Pa: number) =>
    pressure === undefined ? 0 : saturated(pressure + gauge_Pa).dew_K - saturated(pressure).dew_K
  const [low, high] = [
    sdOf(readings.suctionPressure_Pa, SUCTION_GAUGE_PA),
    sdOf(readings.liquidPressure_Pa, LIQUID_GAUGE_PA),
  ]
  const known = (value: number | undefined, sd: number) => (value === undefined ? undefined : { value, sd })
  const readBack = {
    evaporating_K: known(now.evaporating, low),
    superheat_K: known(now.superheat, Math.hypot(0.6, low)),
    condensing_K: known(now.condensing, high),
    subcooling_K: known(now.subcooling, Math.hypot(0.4, high)),
    dischargeTemperature_K: known(now.discharge, 2),
    supplyAir_K: known(readings.supplyAir_K, 0.5),
  }
  const taught = Object.fromEntries(Object.entries(readBack).filter(([, value]) => value !== undefined))
  return asTwinReads({ conditions: at.value, added_kg, readings: taught }, devices[plate.device])
}

const PSI = 6894.757
const SUCTION_GAUGE_PA = 1.75 * PSI
const LIQUID_GAUGE_PA = 3.5 * PSI
