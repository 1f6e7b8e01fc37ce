import { fail, ok, outOfRange, type Problem, type Quantity, quantity, type Result } from '@chargewright/quantity'

/** A charging scale: the step it shows, and the share of the mass by which it may be off. */
export interface Scale {
  readonly resolution_kg: number
  readonly share: number
}

/** Steps of 1 to 10 g, off by 0.05 to 0.1 % and a step: the coarse middle. Recalled, common practice. */
export const PLAIN_SCALE: Scale = { resolution_kg: 0.005, share: 0.001 }

/**
 * What left a cylinder by one scale, before less after. What one scale is off in proportion is the same at both
 * readings, so that only its share of the difference counts; the steps count twice.
 *
 * @returns kg with standard uncertainty
 * @source JCGM 100:2008: 4.3.9 (limits ±a seldom reached, u = a/√6), F.2.2.1 (a step d, u = d/√12), 5.2 (correlation)
 */
export function weighedDifference(
  before: Quantity<'mass'>,
  after: Quantity<'mass'>,
  { resolution_kg, share }: Scale,
): Result<Quantity<'mass'>, Problem> {
  const problem =
    outOfRange('weight before', before.si, 0, 1e5, 'kg') ??
    outOfRange('weight after', after.si, 0, 1e5, 'kg') ??
    outOfRange('step of the scale', resolution_kg, 0, 10, 'kg') ??
    outOfRange('share of the scale', share, 0, 0.1, 'kg/kg')
  if (problem) return fail(problem)
  const si = before.si - after.si
  const allowed = (share * Math.abs(si) + resolution_kg) / Math.sqrt(6)
  const rounding = Math.SQRT2 * (resolution_kg / Math.sqrt(12))
  return ok(quantity('mass', si, Math.hypot(allowed, rounding)))
}
