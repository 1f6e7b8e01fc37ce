import {
  evidence,
  fail,
  type Measure,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { Contents } from './contents.ts'

/** A part that was added to the system: receiver, accumulator, heat exchanger, muffler. */
export interface Accessory {
  readonly name: string
  /** Inside, m³. */
  readonly volume: Quantity<'volume'>
  /** Share of the volume that stands full of liquid when the system runs, 0 to 1; the rest is vapour. */
  readonly liquidShare: number
}

const MAX_VOLUME_M3 = 10

/** What an added part holds: V · (share · liquid + (1 − share) · vapour). The share is the user's, taken as exact. */
export function accessoryCharge(
  { name, volume, liquidShare }: Accessory,
  liquid: Contents,
  vapour: Contents,
): Result<Measure<Quantity<'mass'>>, Problem> {
  const problem =
    outOfRange(`${name}, inside volume`, volume.si, 0, MAX_VOLUME_M3, 'm³') ??
    outOfRange(`${name}, share of liquid`, liquidShare, 0, 1, 'm³/m³')
  if (problem) return fail(problem)
  const density = liquidShare * liquid.density_kg_m3 + (1 - liquidShare) * vapour.density_kg_m3
  const uDensity = Math.hypot(liquidShare * liquid.u_kg_m3, (1 - liquidShare) * vapour.u_kg_m3)
  const mass = quantity('mass', volume.si * density, Math.hypot((volume.u ?? 0) * density, volume.si * uDensity))
  const filled = Math.round(liquidShare * 100)
  const statement = say`${name} ${mass}: ${volume}, ${filled} % of it ${liquid.words}, the rest ${vapour.words}`
  return ok({ quantity: mass, evidence: evidence(statement, liquid.source) })
}
