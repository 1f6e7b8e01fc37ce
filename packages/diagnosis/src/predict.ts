import {
  type Conditions,
  type Health,
  responseAt,
  type Seen,
  SOUND,
  type System,
  solve,
  type Unknowns,
} from '@chargewright/cycle'
import type { Family } from './family.ts'
import type { State } from './hypothesis.ts'
import type { Setting } from './setting.ts'
import { standstillExcess } from './standstill.ts'

/** What one cause at one severity makes of the observables of one set, and how they move with every unknown. */
export interface Prediction {
  /** In the order of `OBSERVABLE_NAMES`. */
  readonly values: Float64Array
  /** Per unknown, in the order of the family's members and then severity and charge: change per unit. */
  readonly slopes: readonly Float64Array[]
  /** Where a neighbouring severity may start its search. */
  readonly unknowns: Unknowns
}

/**
 * One solve, and one step along its tangent for every unknown.
 *
 * @returns undefined where the system would not run so
 */
export function predict(
  family: Family,
  setting: Setting,
  apply: (state: State) => State,
  severer: (state: State) => State,
  severityStep: number,
  start: Unknowns | undefined,
): Prediction | undefined {
  const { nominal } = family
  const sound = soundHealth(nominal, setting.added_kg)
  const here = apply({ system: nominal, health: sound })
  const solution = solve(here.system, setting.at, here.health, start)
  if (solution.kind !== 'steady') return undefined
  const follow = responseAt(here.system, setting.at, here.health, solution.unknowns, seenIn(setting))
  const along = ({ system, health }: State, at?: Conditions) => follow(system, health, at)
  const values = along(here)
  const per = (there: Float64Array, step: number) => there.map((value, i) => (value - values[i]!) / step)
  const slopes = family.members.map(({ nuisance, system, step, deviceShare }) =>
    nuisance.kind === 'weather'
      ? per(along(here, setting.off[nuisance.air]), step)
      : per(along(apply({ system, health: { ...sound, deviceShare } })), step),
  )
  const more = { ...here.health, charge_kg: here.health.charge_kg + CHARGE_STEP * nominal.rated.charge_kg }
  return {
    values,
    slopes: [
      ...slopes,
      per(along(severer({ system: nominal, health: sound })), severityStep),
      per(along({ system: here.system, health: more }), CHARGE_STEP),
    ],
    unknowns: solution.unknowns,
  }
}

const CHARGE_STEP = 0.02

/** The system right and sound, but for what has been weighed in since the first set. */
export const soundHealth = ({ rated }: System, added_kg: number): Health => ({
  ...SOUND,
  charge_kg: rated.charge_kg + added_kg,
})

/** In the order of `OBSERVABLE_NAMES`; against the air as it was read, like what was read is. */
export const seenIn =
  ({ read }: Setting): Seen =>
  (readings, system, health) =>
    Float64Array.of(
      readings.suctionTemperature_K - readings.superheat_K,
      readings.dryness_K,
      readings.liquidTemperature_K + readings.subcooling_K,
      readings.subcooling_K,
      readings.dischargeTemperature_K,
      readings.leavingCondenserAir_K - read.outdoor_K,
      read.returnAir_K - readings.supplyAir_K,
      Math.log(readings.compressorPower_W),
      Math.log(readings.power_W),
      readings.liquidTemperature_K - readings.deviceTemperature_K,
      standstillExcess(system, health, read.standstill?.ambient_K ?? read.outdoor_K),
    )
