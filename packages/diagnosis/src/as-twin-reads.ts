import type { DoseTarget, Observation, Observable as Taught } from '@chargewright/cycle'
import type { DeviceCalibration } from './calibration.ts'
import type { Observable } from './observable.ts'

/** What the twin reads too low on sound systems, of what it can be taught by. */
type Offsets = Pick<DeviceCalibration, 'offset'>

/** How each moves with what it is calibrated as. Power is not: no visit teaches it yet. */
const CALIBRATED_AS: Readonly<Record<Exclude<Taught, 'power_W'>, readonly [Observable, 1 | -1]>> = {
  superheat_K: ['superheat', 1],
  subcooling_K: ['subcooling', 1],
  evaporating_K: ['evaporating', 1],
  condensing_K: ['condensing', 1],
  dischargeTemperature_K: ['discharge', 1],
  supplyAir_K: ['supplyAirDrop', -1],
}

/**
 * The readings as the twin would have had them: without what it is known to read too low. It then need not bend the
 * system to explain its own error.
 */
export function asTwinReads(observation: Observation, { offset }: Offsets): Observation {
  const { readings } = observation
  const corrected = Object.entries(CALIBRATED_AS).flatMap(([name, [calibrated, sign]]) => {
    const reading = readings[name as Taught]
    return reading
      ? [[name, { ...reading, value: reading.value - sign * offsetAt(calibrated, reading.value, offset) }]]
      : []
  })
  return { ...observation, readings: { ...readings, ...Object.fromEntries(corrected) } }
}

/** A target in the same terms; a weight is a weight. */
export const targetAsTwinReads = (target: DoseTarget, { offset }: Offsets): DoseTarget =>
  target.kind === 'charge'
    ? target
    : { ...target, value_K: target.value_K - offsetAt(target.kind, target.value_K, offset) }

/** Near saturation neither the twin nor a thermometer reads below nought, so that less and less is between them. */
function offsetAt(observable: Observable, value: number, offset: Offsets['offset']): number {
  const isBounded = observable === 'superheat' || observable === 'subcooling'
  return isBounded ? offset[observable] * Math.min(Math.max(value / IN_FULL_K, 0), 1) : offset[observable]
}

/** From this far off saturation the offset counts in full. Own choice. */
const IN_FULL_K = 3
