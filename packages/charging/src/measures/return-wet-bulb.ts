import { moistAir } from '@chargewright/moist-air'
import {
  evidence,
  kelvin,
  type Measure,
  type Problem,
  pascal,
  type Quantity,
  quantity,
  say,
} from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { typedIn } from './typed-in.ts'

/** Wet bulb of the return air from its dry bulb and relative humidity, where it was not read itself. */
export function wetBulbFromHumidity(
  visit: Visit,
  site: Measure<Quantity<'absolute pressure'>>,
  problems: Problem[],
): Measure<Quantity<'temperature'>> | undefined {
  const dry = visit.readings['return-air-dry-bulb']
  const humidity = visit.readings['return-air-humidity']
  if (!dry || !humidity) return undefined
  const wetBulb = (T: number, RH: number) =>
    moistAir(kelvin(T), { relativeHumidity: Math.min(RH, 1) }, pascal(site.quantity.si))
  const { si: T, u: uT = 0 } = dry.quantity
  const { si: RH, u: uRH = 0 } = humidity.quantity
  const air = wetBulb(T, RH)
  if (!air.ok) {
    problems.push(air.error)
    return undefined
  }
  // Shifts of one standard uncertainty carry it through the psychrometric equations (JCGM 100:2008, 5.1.3, note 2).
  const warmer = wetBulb(T + uT, RH)
  const drier = wetBulb(T, Math.max(RH - uRH, 0.01))
  const shift = (moved: typeof air | ReturnType<typeof wetBulb>) =>
    moved.ok ? moved.value.wetBulb_K - air.value.wetBulb_K : 0
  const value = quantity('temperature', air.value.wetBulb_K, Math.hypot(shift(warmer), shift(drier)))
  return {
    quantity: value,
    evidence: evidence(say`Return air, wet bulb ${value}`, 'ASHRAE Fundamentals 2017, ch. 1', [
      typedIn(dry),
      typedIn(humidity),
      site.evidence,
    ]),
  }
}
