import { type Conditions, conditions } from '@chargewright/cycle'
import { ok, type Problem, type Result } from '@chargewright/quantity'
import type { DeviceCalibration } from './calibration.ts'
import { meanResponse } from './charge-response.ts'
import { WEATHER_STEPS_K } from './nuisance.ts'
import type { ReadingSet, WeighedSet } from './reading-set.ts'

/** One set of readings with its weather as read, and as it would be if one of its thermometers were off. */
export interface Setting {
  readonly read: ReadingSet
  readonly at: Conditions
  readonly off: Readonly<Record<keyof typeof WEATHER_STEPS_K, Conditions>>
  /** What was weighed in since the first set, as the twin takes it. */
  readonly added_kg: number
}

export function settingsOf(
  sets: readonly WeighedSet[],
  { chargeResponse }: Pick<DeviceCalibration, 'chargeResponse'>,
): Result<readonly Setting[], Problem> {
  const settings: Setting[] = []
  for (const { readings: read, added_kg } of sets) {
    const weather = (warmer: Partial<typeof WEATHER_STEPS_K>) =>
      conditions(
        read.outdoor_K + (warmer.outdoor ?? 0),
        read.returnAir_K + (warmer.returnAir ?? 0),
        read.returnWetBulb_K + (warmer.returnWetBulb ?? 0),
      )
    const { outdoor, returnAir, returnWetBulb } = WEATHER_STEPS_K
    const at = weather({})
    const warmOutdoors = weather({ outdoor })
    const warmReturn = weather({ returnAir })
    const dryReturn = weather({ returnWetBulb })
    for (const tried of [at, warmOutdoors, warmReturn, dryReturn]) if (!tried.ok) return tried
    if (!(at.ok && warmOutdoors.ok && warmReturn.ok && dryReturn.ok)) continue
    const off = { outdoor: warmOutdoors.value, returnAir: warmReturn.value, returnWetBulb: dryReturn.value }
    settings.push({ read, at: at.value, off, added_kg: meanResponse(chargeResponse) * added_kg })
  }
  return ok(settings)
}
