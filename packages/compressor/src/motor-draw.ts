import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import type { Motor } from './compressor.ts'

/** Power and current over those at rated voltage and load. */
export interface MotorDraw {
  readonly power: number
  readonly current: number
}

/**
 * What a compressor motor draws at another voltage and load, from the static load model of air conditioners:
 * P ∝ load · V^a, Q ∝ V^b, I = √(P² + Q²)/V. At less voltage a loaded compressor draws more amps, but not in proportion.
 *
 * @param voltage measured over rated, 0.9 to 1.1: beyond, the supply is to be put right first
 * @param load power over rated at the rated voltage, 0.5 to 2
 * @returns ratios; else the argument that is out of range
 * @source exponents and power factors of central air conditioners: Kundur 1994, Power System Stability and Control,
 *   table 7.1. REMEMBERED
 */
export function motorDraw(phases: Motor['phases'], voltage: number, load: number): Result<MotorDraw, Problem> {
  const problem =
    outOfRange('measured over rated voltage', voltage, 0.9, 1.1, '') ?? outOfRange('load over rated', load, 0.5, 2, '')
  if (problem) return fail(problem)
  const { powerFactor, a, b } = MODEL[phases]
  const power = load * voltage ** a
  const reactive = Math.sqrt(1 - powerFactor ** 2) * voltage ** b
  return ok({ power, current: Math.hypot(powerFactor * power, reactive) / voltage })
}

export const MOTOR_SOURCE = 'static load model of air conditioners, Kundur 1994, table 7.1 (recalled)'

const MODEL = {
  1: { powerFactor: 0.96, a: 0.202, b: 2.3 },
  3: { powerFactor: 0.9, a: 0.088, b: 2.5 },
} as const
