import { type Conditions, conditions, type System } from '@chargewright/cycle'
import { ok, type Problem, type Result } from '@chargewright/quantity'
import type { DeviceCalibration } from './calibration.ts'
import { twinDeviation } from './charge-response.ts'
import { WEATHER_STEPS_K } from './nuisance.ts'
import type { ReadingSet, WeighedSet } from './reading-set.ts'

/** The weather of one set as it was read, and as it would be if one of its thermometers were off; nothing of the circuit. */
export interface Setting {
  readonly outdoor_K: number
  readonly returnAir_K: number
  /** Of the coils when it stood still. */
  readonly atRest_K: number
  readonly at: Conditions
  readonly off: Readonly<Record<keyof typeof WEATHER_STEPS_K, Conditions>>
  /** What was weighed in since the first set, over the nameplate charge; and as the twin takes it. */
  readonly added: number
  readonly added_kg: number
}

export function settingsOf(
  { rated }: System,
  sets: readonly WeighedSet[],
  { chargeResponse }: Pick<DeviceCalibration, 'chargeResponse'>,
): Result<readonly Setting[], Problem> {
  const settings: Setting[] = []
  for (const { readings, added_kg } of sets) {
    const at = weatherOf(readings)
    if (!at.ok) return at
    const outdoor = weatherOf(readings, 'outdoor')
    if (!outdoor.ok) return outdoor
    const returnAir = weatherOf(readings, 'returnAir')
    if (!returnAir.ok) return returnAir
    const returnWetBulb = weatherOf(readings, 'returnWetBulb')
    if (!returnWetBulb.ok) return returnWetBulb
    const added = added_kg / rated.charge_kg
    settings.push({
      outdoor_K: readings.outdoor_K,
      returnAir_K: readings.returnAir_K,
      atRest_K: readings.standstill?.ambient_K ?? readings.outdoor_K,
      at: at.value,
      off: { outdoor: outdoor.value, returnAir: returnAir.value, returnWetBulb: returnWetBulb.value },
      added,
      added_kg: twinDeviation(added, chargeResponse) * rated.charge_kg,
    })
  }
  return ok(settings)
}

/** As read, or with one thermometer off by its step. */
function weatherOf(read: ReadingSet, off?: keyof typeof WEATHER_STEPS_K): Result<Conditions, Problem> {
  const moved = (air: keyof typeof WEATHER_STEPS_K) => (air === off ? WEATHER_STEPS_K[air] : 0)
  return conditions(
    read.outdoor_K + moved('outdoor'),
    read.returnAir_K + moved('returnAir'),
    read.returnWetBulb_K + moved('returnWetBulb'),
    read.airPressure_Pa,
  )
}
