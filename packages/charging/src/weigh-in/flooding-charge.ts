import {
  evidence,
  fail,
  kelvin,
  type Measure,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import { type Refrigerant, saturationAtTemperature } from '@chargewright/refrigerant'

/** Head-pressure control that floods the condenser with liquid when it is cold outside. */
export interface FloodedCondenser {
  /** Inside, m³. */
  readonly volume: Quantity<'volume'>
  /** Condensing temperature above entering air for which the condenser was chosen. */
  readonly designDifference: Quantity<'temperature difference'>
  /** Condensing temperature that the control holds. */
  readonly heldCondensing: Quantity<'temperature'>
  /** Coldest air in which the system runs. */
  readonly lowestAmbient: Quantity<'temperature'>
}

/**
 * Share of the condenser that must be flooded: 1 − design difference / difference on the coldest day. The same heat
 * leaves through the rest of the surface, Q = U·A·ΔT. None in air that is warm enough.
 *
 * @source own derivation; the trade gives the same figures in words (twice the difference: flood half)
 */
export function floodedFraction(condenser: Omit<FloodedCondenser, 'volume'>): Result<number, Problem> {
  const { designDifference, heldCondensing, lowestAmbient } = condenser
  const problem =
    outOfRange('design temperature difference', designDifference.si, 0.1, 100, 'K') ??
    outOfRange('held condensing temperature', heldCondensing.si, 200, 400, 'K') ??
    outOfRange('lowest ambient temperature', lowestAmbient.si, 200, 400, 'K')
  if (problem) return fail(problem)
  const needed = heldCondensing.si - lowestAmbient.si
  return ok(needed <= designDifference.si ? 0 : 1 - designDifference.si / needed)
}

/** Desuperheating and subcooling take their share of a real condenser: ±10 %, an estimate. */
const REAL_CONDENSER_SHARE = 0.1
const MAX_VOLUME_M3 = 10

/**
 * Charge beyond that of a summer day: condenser volume · flooded share · (liquid at the coldest air − the vapour it
 * takes the place of, at the held condensing temperature).
 *
 * @returns mass in kg, limits of ±10 % taken as its uncertainty (JCGM 100:2008, 4.3.7)
 */
export function floodingCharge(
  refrigerant: Refrigerant,
  condenser: FloodedCondenser,
): Result<Measure<Quantity<'mass'>>, Problem> {
  const { volume, heldCondensing, lowestAmbient } = condenser
  const problem = outOfRange('condenser, inside volume', volume.si, 0, MAX_VOLUME_M3, 'm³')
  if (problem) return fail(problem)
  const fraction = floodedFraction(condenser)
  if (!fraction.ok) return fraction
  const cold = saturationAtTemperature(refrigerant, kelvin(lowestAmbient.si))
  if (!cold.ok) return cold
  const held = saturationAtTemperature(refrigerant, kelvin(heldCondensing.si))
  if (!held.ok) return held
  const perVolume = fraction.value * (cold.value.bubble.density_kg_m3 - held.value.dew.density_kg_m3)
  const si = volume.si * perVolume
  const mass = quantity('mass', si, Math.hypot((si * REAL_CONDENSER_SHARE) / Math.sqrt(3), (volume.u ?? 0) * perVolume))
  const share = Number((fraction.value * 100).toPrecision(3))
  const statement = say`Head-pressure control ${mass}: ${share} % of ${volume} flooded to hold ${heldCondensing} at ${lowestAmbient}`
  return ok({ quantity: mass, evidence: evidence(statement, 'constant heat flow, estimated within 10 %') })
}
