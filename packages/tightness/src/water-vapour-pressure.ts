import {
  fail,
  type Kelvin,
  ok,
  outOfRange,
  type Pascal,
  type Problem,
  pascal,
  type Result,
} from '@chargewright/quantity'

const TRIPLE_K = 273.16
const MIN_K = 173.15
const MAX_K = 473.15

/**
 * Vapour pressure of water, over ice below the triple point and over liquid above,
 * ln p = C/T + c₀ + c₁T + c₂T² + c₃T³ (+ c₄T⁴) + c₅ ln T. A vacuum dries a system only while it is below this at the
 * coldest spot.
 *
 * @param temperature −100 °C to 200 °C
 * @returns absolute pressure
 * @source ASHRAE Handbook – Fundamentals 2017, ch. 1, eq. 5 and 6; coefficients REMEMBERED
 * @accuracy 300 ppm against the values of table 3 that the tests hold
 *
 * Differs from the source: the handbook changes branch at 0 °C, this at the triple point, where the two agree to 10⁻⁷.
 */
export function waterVapourPressure(temperature: Kelvin): Result<Pascal, Problem> {
  const T = temperature
  const problem = outOfRange('temperature of the coldest spot', T, MIN_K, MAX_K, 'K')
  if (problem) return fail(problem)
  const lnP =
    T < TRIPLE_K
      ? -5.6745359e3 / T +
        6.3925247 -
        9.677843e-3 * T +
        6.2215701e-7 * T ** 2 +
        2.0747825e-9 * T ** 3 -
        9.484024e-13 * T ** 4 +
        4.1635019 * Math.log(T)
      : -5.8002206e3 / T +
        1.3914993 -
        4.8640239e-2 * T +
        4.1764768e-5 * T ** 2 -
        1.4452093e-8 * T ** 3 +
        6.5459673 * Math.log(T)
  return ok(pascal(Math.exp(lnP)))
}
