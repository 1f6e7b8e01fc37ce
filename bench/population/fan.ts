/** A fan on a coil: a falling curve against a square resistance. */
export interface Fan {
  /** With a clean coil, m³/s. */
  readonly clean_m3_s: number
  readonly power_W: number
  /** How steeply its pressure falls with flow: share of shut-off pressure used up at the clean point, 0 to 1. */
  readonly steepness: number
  /** Holds its flow by speed: a dirty coil then costs power instead of air, until its limit. */
  readonly holdsFlow: boolean
  /** Share of the air that is missing. */
  readonly missing: number
  /** What takes it away: resistance in front of the fan, or a fan that turns too slowly. */
  readonly because: 'blocked' | 'slow'
}

export interface Blown {
  readonly flow_m3_s: number
  /** Over clean. */
  readonly share: number
  readonly power_W: number
}

/**
 * Flow and electric power where fan and resistance meet. A wet coil resists more.
 *
 * Of a blocked fan the pressure rises along its curve while flow falls: power goes as flow times pressure over an
 * efficiency that also falls. Of a slow one power goes with the cube of speed, less what the motor always takes.
 */
export function blow(fan: Fan, isWet: boolean): Blown {
  const s = 1 - fan.missing
  const damp = isWet ? 1 - 0.06 * (1 - fan.steepness * 0.5) * (fan.holdsFlow ? 0.2 : 1) : 1
  const share = s * damp
  const pressure = (1 - fan.steepness * share * share) / (1 - fan.steepness)
  const efficiency = 1 - 0.6 * (1 - share) ** 2
  const blocked = fan.holdsFlow
    ? (share * share) ** 0.2 / efficiency
    : (0.35 + 0.65 * share * pressure ** 0.5) / efficiency
  const slow = 0.25 + 0.75 * share ** 2.6
  return {
    flow_m3_s: fan.clean_m3_s * share,
    share,
    power_W: fan.power_W * (fan.because === 'blocked' ? blocked : slow),
  }
}
