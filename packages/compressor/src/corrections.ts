import {
  type Evidence,
  evidence,
  fail,
  ok,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { Compressor, Motor } from './compressor.ts'
import { MOTOR_SOURCE, type MotorDraw, motorDraw } from './motor-draw.ts'
import type { RatedQuantity } from './rated-quantity.ts'
import { type SuctionGas, superheatCorrection } from './superheat-correction.ts'

/** The suction gas as the rating has it and as it is, at the same pressures; `as-rated` where the two are the same. */
export type ReturnGas =
  | { readonly kind: 'as-rated' }
  | { readonly kind: 'measured'; readonly rated: SuctionGas; readonly actual: SuctionGas }

/** What a rated value is multiplied by, with its relative standard uncertainty. */
export interface Correction {
  readonly factor: number
  readonly u: number
  readonly evidence: Evidence
}

/**
 * Corrections from the conditions of the rating to those found: the return gas for every quantity, the voltage for
 * power and current.
 *
 * @returns both; else the reading that is out of range, or `missing` where a capacity lacks a refrigerating effect
 */
export function corrections(
  what: RatedQuantity,
  compressor: Compressor,
  gas: ReturnGas,
  voltage: Quantity<'voltage'> | undefined,
): Result<readonly Correction[], Problem> {
  const byGas = returnGas(what, gas, compressor.motor?.phases ?? 1)
  if (!byGas.ok || what === 'mass flow' || what === 'capacity') return byGas.ok ? ok([byGas.value]) : byGas
  const byVoltage = supply(what, compressor.motor, voltage)
  return byVoltage.ok ? ok([byGas.value, byVoltage.value]) : byVoltage
}

function returnGas(what: RatedQuantity, gas: ReturnGas, phases: Motor['phases']): Result<Correction, Problem> {
  if (gas.kind === 'as-rated')
    return ok({ factor: 1, u: 0, evidence: evidence(say`return gas as rated`, 'as entered') })
  const by = superheatCorrection(gas.rated, gas.actual)
  if (!by.ok) return by
  const { flow, power, capacity, u } = by.value
  const correction = (factor: number): Result<Correction, Problem> =>
    ok({ factor, u, evidence: evidence(say`times ${rounded(factor)} for the return gas`, SUPERHEAT_SOURCE) })
  switch (what) {
    case 'mass flow':
      return correction(flow)
    case 'power':
      return correction(power)
    case 'current': {
      const draw = motorDraw(phases, 1, power)
      return draw.ok ? correction(draw.value.current) : draw
    }
    case 'capacity':
      return capacity === undefined
        ? fail({
            kind: 'missing',
            field: 'refrigerating effect',
            value: 'nothing',
            accepted: 'one for rated and actual gas',
          })
        : correction(capacity)
  }
}

function supply(
  what: keyof MotorDraw,
  motor: Motor | undefined,
  voltage: Quantity<'voltage'> | undefined,
): Result<Correction, Problem> {
  if (!motor || !voltage) {
    const statement = motor
      ? say`voltage not read, taken as rated`
      : say`rated voltage not known, supply taken as rated`
    return ok({
      factor: 1,
      u: UNKNOWN_VOLTAGE[what],
      evidence: evidence(statement, 'assumption: supply within 10 % of rated'),
    })
  }
  const ratio = voltage.si / motor.voltage_V
  const draw = motorDraw(motor.phases, ratio, 1)
  if (!draw.ok) return draw
  const factor = draw.value[what]
  // Half the correction for the law, and what the voltmeter leaves open, by the law's slope at its steepest, 1 for 1.
  const u = Math.hypot((factor - 1) / 2, (voltage.u ?? 0) / voltage.si)
  return ok({
    factor,
    u,
    evidence: evidence(
      say`times ${rounded(factor)} for a voltage of ${voltage}, rated ${quantity('voltage', motor.voltage_V)}`,
      MOTOR_SOURCE,
    ),
  })
}

const SUPERHEAT_SOURCE = 'Dabiri & Rice 1981, F = 0.75'
/** A supply anywhere within 10 % of rated (u = 10 %/√3), through the slopes of the law, 0.75 for current, 0.2 for power. */
const UNKNOWN_VOLTAGE: Readonly<Record<keyof MotorDraw, number>> = { current: 0.045, power: 0.012 }

const rounded = (factor: number): number => Number(factor.toFixed(3))
