import { outOfRange, type Problem } from './problem.ts'
import { inQuadrature, type Quantity, quantity } from './quantity.ts'
import { fail, ok, type Result } from './result.ts'

/** Standard atmosphere at sea level, Pa (exact by definition). */
export const STANDARD_ATMOSPHERE = quantity('absolute pressure', 101_325)

const MIN_M = -5_000
const MAX_M = 11_000
const MIN_PA = 1e-3
const MAX_PA = 1e9

/**
 * Standard atmospheric pressure at an elevation, p = 101.325 (1 − 2.25577·10⁻⁵ Z)^5.2559 kPa.
 *
 * @param elevation −5 000 m to 11 000 m
 * @source ASHRAE Handbook – Fundamentals 2017, ch. 1, eq. 3
 */
export function atmosphericPressure(elevation: Quantity<'elevation'>): Result<Quantity<'absolute pressure'>, Problem> {
  const Z = elevation.si
  const problem = outOfRange('elevation', Z, MIN_M, MAX_M, 'm')
  return problem ? fail(problem) : ok(quantity('absolute pressure', 101_325 * (1 - 2.25577e-5 * Z) ** 5.2559))
}

/**
 * Absolute pressure behind a gauge reading at the site's atmospheric pressure; an absolute one is handed through.
 * The uncertainties of gauge and atmosphere are independent and add in quadrature.
 *
 * @returns 0.001 Pa (less than a service pump reaches or a gauge shows) to 1 GPa; else a problem of `field`
 */
export function toAbsolute(
  reading: Quantity<'gauge pressure' | 'absolute pressure'>,
  atmosphere: Quantity<'absolute pressure'>,
  field: string,
): Result<Quantity<'absolute pressure'>, Problem> {
  const gauge = reading.dimension === 'gauge pressure'
  const zero = gauge ? atmosphere.si : 0
  const problem = outOfRange(field, reading.si, MIN_PA - zero, MAX_PA - zero, gauge ? 'Pa gauge' : 'Pa absolute')
  if (problem) return fail(problem)
  const u = gauge ? inQuadrature(reading.u, atmosphere.u) : reading.u
  return ok(quantity('absolute pressure', reading.si + zero, u))
}
