import {
  evidence,
  fail,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { AirStream } from './air-stream.ts'
import { type Airflow, airflowFound } from './airflow.ts'

/** What the heater takes, measured while it runs, and the rise of the air across it. */
export interface ElectricHeat {
  readonly phases: 1 | 3
  /** Between the lines. */
  readonly voltage: Quantity<'voltage'>
  /** In one line. */
  readonly current: Quantity<'current'>
  /** Power of a blower in the stream that the current does not include, W. */
  readonly blower_W?: number
  /** Supply less return, settled; read where the probes cannot see the heater. */
  readonly rise: Quantity<'temperature difference'>
}

/**
 * Airflow from the rise of temperature across an electric heater: all that the heater takes goes into the air,
 * P = ṁ (c_p,a + W c_p,w) Δt. The classic CFM = W · 3.412/(1.08 Δt) is this at standard density.
 *
 * @param heat 20 V to 1000 V, 0.1 A to 1000 A; rise 3 K to 60 K, at least three times its standard uncertainty
 * @param entering the air before the heater, to whose density the airflow belongs
 * @returns the airflow; else the reading that is out of range
 * @source energy balance; specific heats of ASHRAE Handbook – Fundamentals 2017, ch. 1, eq. 30
 */
export function airflowByElectricHeat(heat: ElectricHeat, entering: AirStream): Result<Airflow, Problem> {
  const { phases, voltage, current, blower_W = 0, rise } = heat
  const problem =
    outOfRange('heater voltage', voltage.si, 20, 1000, 'V') ??
    outOfRange('heater current', current.si, 0.1, 1000, 'A') ??
    outOfRange('blower power', blower_W, 0, 20_000, 'W') ??
    outOfRange('temperature rise', rise.si, Math.max(3, 3 * (rise.u ?? 0)), 60, 'K')
  if (problem) return fail(problem)
  const { density_kg_m3, humidityRatio: W } = entering.air
  const heater_W = (phases === 3 ? Math.sqrt(3) : 1) * voltage.si * current.si
  const total_W = heater_W + blower_W
  const dryAir_kg_s = total_W / ((1006 + 1860 * W) * rise.si)
  const byMeters = Math.hypot((voltage.u ?? 0) / voltage.si, (current.u ?? 0) / current.si)
  const uMass = Math.hypot(
    (heater_W / total_W) * byMeters,
    (blower_W / total_W) * BLOWER_UNCERTAINTY,
    (rise.u ?? 0) / rise.si,
  )
  return airflowFound(
    'by electric heat',
    entering,
    {
      actual_m3_s: (dryAir_kg_s * (1 + W)) / density_kg_m3,
      uActual: Math.hypot(uMass, entering.uDensity),
      uMass,
    },
    'energy balance of the air across the heater',
    [
      evidence(say`heater ${voltage}, ${current}, ${phases === 3 ? 'three phases' : 'single phase'}`),
      ...(blower_W > 0 ? [evidence(say`blower ${quantity('power', blower_W)}`)] : []),
      evidence(say`temperature rise ${rise}`),
    ],
  )
}

/** Of a blower's power, typed off a nameplate or a curve: common practice. */
const BLOWER_UNCERTAINTY = 0.2
