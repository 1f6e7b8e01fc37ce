import { type Quantity, quantity } from '@chargewright/quantity'

type Absolute = Quantity<'absolute pressure'>
type Temperature = Quantity<'temperature'>

/** The two readings of a standing test, in absolute pressure. */
export interface PressureAndTemperature {
  readonly pressure: Absolute
  readonly temperature: Temperature
}

/** Last digit of the instruments that read both ends of the test. */
export interface Resolution {
  readonly pressure: Quantity<'pressure difference'>
  readonly temperature: Quantity<'temperature difference'>
}

/**
 * Pressure that a tight system shows at the later temperature, p₁ T₂/T₁ with absolute pressures.
 *
 * @source perfect gas at constant volume
 */
export function pressureAtTemperature({ pressure, temperature }: PressureAndTemperature, later: Temperature): Absolute {
  const { si: p1, u: up = 0 } = pressure
  const { si: T1, u: uT1 = 0 } = temperature
  const { si: T2, u: uT2 = 0 } = later
  const p2 = (p1 * T2) / T1
  const u = p2 * Math.hypot(up / p1, uT1 / T1, uT2 / T2, beyondPerfectGas(p1, T1, T2))
  return quantity('absolute pressure', p2, u)
}

/**
 * Gain (positive) or loss of pressure between two readings beyond what the change of temperature explains. The gas is
 * not quite at the temperature of the probe, whatever instrument reads it: 0.3 K at each end, by common practice.
 *
 * @param same where the same two instruments read both ends: their own errors are then the same at both ends and cancel
 *   but for the last digit; without it the errors at both ends are independent
 * @source JCGM 100:2008, 5.1.2 (independent), 5.2.2 note 1 (fully correlated)
 */
export function pressureChange(
  start: PressureAndTemperature,
  end: PressureAndTemperature,
  same?: Resolution,
): Quantity<'pressure difference'> {
  const { si: p1, u: up1 = 0 } = start.pressure
  const { si: T1, u: uT1 = 0 } = start.temperature
  const { si: p2, u: up2 = 0 } = end.pressure
  const { si: T2, u: uT2 = 0 } = end.temperature
  const change = p2 - (p1 * T2) / T1
  const byPressure: Share = [-T2 / T1, up1, 1, up2]
  const byTemperature: Share = [(p1 * T2) / T1 ** 2, uT1, -p1 / T1, uT2]
  const u = Math.hypot(
    same ? together(byPressure, same.pressure.si) : apart(byPressure),
    same ? together(byTemperature, same.temperature.si) : apart(byTemperature),
    apart([byTemperature[0], GAS_BESIDE_PROBE_K, byTemperature[2], GAS_BESIDE_PROBE_K]),
    p1 * (T2 / T1) * beyondPerfectGas(p1, T1, T2),
  )
  return quantity('pressure difference', change, u)
}

/** How far a probe on the pipe may stand from the mean of the gas, anew at each reading: common practice. */
const GAS_BESIDE_PROBE_K = 0.3

/** Sensitivity and standard uncertainty of the first reading, then of the second. */
type Share = readonly [s1: number, u1: number, s2: number, u2: number]

function apart([s1, u1, s2, u2]: Share): number {
  return Math.hypot(s1 * u1, s2 * u2)
}

/** The common error, and the rounding of each display, d/√12. */
function together([s1, u1, s2, u2]: Share, step: number): number {
  return Math.hypot(s1 * u1 + s2 * u2, (s1 * step) / Math.sqrt(12), (s2 * step) / Math.sqrt(12))
}

/**
 * Relative standard uncertainty for nitrogen not being a perfect gas: at constant volume its pressure rises faster with
 * temperature by the fraction p B′/R, 9 % at 3.5 MPa, where B is its second virial coefficient. The published tables
 * leave it out, so it is taken as a limit of the error and not as a correction.
 */
function beyondPerfectGas(p: number, T1: number, T2: number): number {
  return (Math.abs(T2 / T1 - 1) * p * VIRIAL_SLOPE) / R / Math.sqrt(3)
}

/** m³/(mol K), about 290 K; from B = −10.3 cm³/mol at 273 K and −4.2 cm³/mol at 300 K, REMEMBERED. */
const VIRIAL_SLOPE = 0.226e-6
const R = 8.314_462_618
