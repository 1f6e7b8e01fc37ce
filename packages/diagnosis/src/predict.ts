import { type Health, responseAt, type Seen, SOUND, type System, solve, type Unknowns } from '@chargewright/cycle'
import type { Family } from './family.ts'
import type { State } from './hypothesis.ts'
import type { Setting } from './setting.ts'
import { standstillExcess } from './standstill.ts'

/** A cause at one severity as the twin solves it. */
export interface Solved {
  readonly state: State
  /** What is seen of it, in the order of `OBSERVABLE_NAMES`. */
  readonly values: Float64Array
  /** Where a neighbouring severity may start its search. */
  readonly unknowns: Unknowns
}

/** @returns undefined where the system would not run so */
export function solvedAt(
  { nominal }: Family,
  setting: Setting,
  apply: (state: State) => State,
  start: Unknowns | undefined,
): Solved | undefined {
  const state = apply({ system: nominal, health: soundHealth(nominal, setting.added_kg) })
  const solution = solve(state.system, setting.at, state.health, start)
  if (solution.kind !== 'steady') return undefined
  return {
    state,
    values: seenIn(setting)(solution.readings, state.system, state.health),
    unknowns: solution.unknowns,
  }
}

/**
 * How what is seen moves with every unknown, per unit of it: the members of the family in their order, then the
 * severity, then the charge. One step along the tangent for each.
 *
 * @param severer the cause at a severity this much higher
 */
export function slopesAt(
  { nominal, members }: Family,
  setting: Setting,
  { state, unknowns }: Solved,
  apply: (state: State) => State,
  severer: (state: State) => State,
  severityStep: number,
): readonly Float64Array[] {
  const follow = responseAt(state.system, setting.at, state.health, unknowns, seenIn(setting))
  const here = follow(state.system, state.health)
  const per = (there: Float64Array, step: number) => there.map((value, i) => (value - here[i]!) / step)
  const along = ({ system, health }: State, step: number) => per(follow(system, health), step)
  const sound = soundHealth(nominal, setting.added_kg)
  const more = { ...state.health, charge_kg: state.health.charge_kg + CHARGE_STEP * nominal.rated.charge_kg }
  return [
    ...members.map(({ nuisance, system, step, deviceShare }) =>
      nuisance.kind === 'weather'
        ? per(follow(state.system, state.health, setting.off[nuisance.air]), step)
        : along(apply({ system, health: { ...sound, deviceShare } }), step),
    ),
    along(severer({ system: nominal, health: sound }), severityStep),
    along({ system: state.system, health: more }, CHARGE_STEP),
  ]
}

const CHARGE_STEP = 0.02

/** The system right and sound, but for what has been weighed in since the first set. */
export const soundHealth = ({ rated }: System, added_kg: number): Health => ({
  ...SOUND,
  charge_kg: rated.charge_kg + added_kg,
})

/** In the order of `OBSERVABLE_NAMES`; against the air as it was read, like what was read is. */
export const seenIn =
  ({ outdoor_K, returnAir_K, atRest_K }: Setting): Seen =>
  (readings, system, health) =>
    Float64Array.of(
      readings.suctionTemperature_K - readings.superheat_K,
      readings.dryness_K > 0 ? readings.dryness_K : WETNESS * readings.dryness_K,
      readings.liquidTemperature_K + readings.subcooling_K,
      readings.subcooling_K,
      readings.dischargeTemperature_K,
      readings.leavingCondenserAir_K - outdoor_K,
      returnAir_K - readings.supplyAir_K,
      Math.log(readings.compressorPower_W),
      Math.log(readings.power_W),
      readings.liquidTemperature_K - readings.deviceTemperature_K,
      standstillExcess(system, health, atRest_K),
    )

/**
 * Below the dew point, the share of the missing enthalpy that counts as missing superheat: in full it would run to tens
 * of kelvins, and with it the spread that a linear model gives a reading which in truth stops at nought. Own choice.
 */
const WETNESS = 0.2
