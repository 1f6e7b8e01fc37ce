import type { Judge, Seen, Verdict } from '../verdict.ts'
import { measured } from './measured.ts'
import { superheatTarget_F } from './regulation.ts'

/**
 * The virtual refrigerant charge sensor, model I: charge error from the deviations of subcooling and superheat at the
 * condenser's and the evaporator's outlet from their rated values,
 * (m − m_r)/m_r = [(ΔT_sc − ΔT_sc,r) − k (ΔT_sh − ΔT_sh,r)] / k_ch, k_ch = ΔT_sc,r / ((1 − α₀) X_hs,r),
 * with its default parameters. It names no other cause, is silent without superheat, where its authors say it fails,
 * and acts beyond the 10 % to which it is published to be right, which also serves as its interval.
 *
 * Rated values that the nameplate does not print are those of the trade: 10 °F of subcooling, 10 °F of superheat at a
 * valve; at a fixed device the regulation's target at 95 °F outdoors and 67 °F wet bulb.
 *
 * @source Li & Braun 2009, HVAC&R Research 15(1), 117-136 (form and defaults remembered); Kim & Braun 2010-2015, Purdue
 * conferences, for its accuracy and where it fails; rated values without nameplate: common practice
 */
export const virtualSensor: Judge = {
  name: 'virtual charge sensor',
  judge: (seen) => {
    const error = virtualChargeError(seen)
    if (error === undefined) return { kind: 'no-verdict', next: 'subcooling' }
    return Math.abs(error) <= ACCURACY ? { kind: 'hold' } : act(error, seen.plate.charge_kg)
  },
}

const CHARGE_AT_SATURATION = 0.75
const HIGH_SIDE_SHARE = 0.73
const SUPERHEAT_GAIN = 0.4
const ACCURACY = 0.1
const TEN_F = 10 / 1.8
const FIXED_DEVICE_SUPERHEAT_K = (superheatTarget_F(95, 67) ?? Number.NaN) / 1.8

/** Charge over rated charge, minus 1; undefined without subcooling or where the suction gas has no superheat. */
export function virtualChargeError(seen: Seen): number | undefined {
  const { superheat, subcooling } = measured(seen)
  if (subcooling === undefined || superheat <= 0) return undefined
  const ratedSubcooling = seen.plate.subcooling_K ?? TEN_F
  const ratedSuperheat = seen.plate.device === 'thermostatic' ? TEN_F : FIXED_DEVICE_SUPERHEAT_K
  const gain = ratedSubcooling / ((1 - CHARGE_AT_SATURATION) * HIGH_SIDE_SHARE)
  return (subcooling - ratedSubcooling - SUPERHEAT_GAIN * (superheat - ratedSuperheat)) / gain
}

function act(error: number, charge_kg: number): Verdict {
  const inKg = (share: number) => share * charge_kg
  const far = Math.abs(error)
  return {
    kind: error < 0 ? 'add' : 'recover',
    amount: { kg: inKg(far), low_kg: inKg(far - ACCURACY), high_kg: inKg(far + ACCURACY) },
  }
}
