import { assess, sitePressure } from '@chargewright/charging'
import { type Conditions, conditions, type System } from '@chargewright/cycle'
import { fail, type Problem, type Result } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { ifGiven, readFlags } from '../read-flags.ts'
import { typedTemperature } from '../typed-flag.ts'

/** The air on either side of a system, as typed. */
export interface AirFlags {
  readonly outdoor?: string
  readonly return?: string
  readonly wetBulb?: string
}

/**
 * The conditions that flags ask for; what they leave open is as last read in the visit, else as at the rating of such a
 * system. Return air that is given without its wet bulb keeps the wet-bulb depression.
 */
export function siteAir(visit: Visit, { rated }: System, flags: AirFlags): Result<Conditions, readonly Problem[]> {
  const given = readFlags({
    outdoor: ifGiven(flags.outdoor, (text) => typedTemperature(text, 'outdoor')),
    dryBulb: ifGiven(flags.return, (text) => typedTemperature(text, 'return')),
    wetBulb: ifGiven(flags.wetBulb, (text) => typedTemperature(text, 'wet-bulb')),
  })
  if (!given.ok) return given
  const { readings } = visit
  const outdoor = readings['condenser-entering-air']?.quantity.si ?? rated.conditions.outdoor.dryBulb_K
  const wetBulb = assess(visit).measures.returnWetBulb?.quantity.si
  const dryBulb = readings['return-air-dry-bulb']?.quantity.si
  const indoor =
    wetBulb !== undefined && dryBulb !== undefined
      ? { dryBulb, wetBulb }
      : { dryBulb: rated.conditions.indoor.dryBulb_K, wetBulb: rated.conditions.indoor.wetBulb_K }
  const asked = given.value.dryBulb ?? indoor.dryBulb
  const found = conditions(
    given.value.outdoor ?? outdoor,
    asked,
    given.value.wetBulb ?? asked - (indoor.dryBulb - indoor.wetBulb),
    sitePressure(visit, []).quantity.si,
  )
  return found.ok ? found : fail([found.error])
}
