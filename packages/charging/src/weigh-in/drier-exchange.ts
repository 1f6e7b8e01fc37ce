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

const MAX_VOLUME_M3 = 1

/**
 * What a replacement drier holds more (or, negative, less) than the old one, both full of liquid.
 *
 * @param volumes inside, free of desiccant, m³
 */
export function drierExchange(
  { oldVolume, newVolume }: { readonly oldVolume: Quantity<'volume'>; readonly newVolume: Quantity<'volume'> },
  liquid: Contents,
): Result<Measure<Quantity<'mass'>>, Problem> {
  const problem =
    outOfRange('old drier, inside volume', oldVolume.si, 0, MAX_VOLUME_M3, 'm³') ??
    outOfRange('new drier, inside volume', newVolume.si, 0, MAX_VOLUME_M3, 'm³')
  if (problem) return fail(problem)
  const more = newVolume.si - oldVolume.si
  const u = Math.hypot(liquid.density_kg_m3 * Math.hypot(oldVolume.u ?? 0, newVolume.u ?? 0), more * liquid.u_kg_m3)
  const mass = quantity('mass', more * liquid.density_kg_m3, u)
  const statement = say`Drier ${mass}: ${newVolume} in place of ${oldVolume}, full of ${liquid.words}`
  return ok({ quantity: mass, evidence: evidence(statement, liquid.source) })
}
