import {
  evidence,
  type Measure,
  type Problem,
  pascal,
  type Quantity,
  quantity,
  say,
  toAbsolute,
} from '@chargewright/quantity'
import { type Refrigerant, saturationAtPressure } from '@chargewright/refrigerant'
import { type Reading, readingKind } from '@chargewright/visit'
import { typedIn } from './typed-in.ts'

/** Dew or bubble temperature at the pressure of a port, with the uncertainty of its gauge carried along the line. */
export function saturated(
  reading: Reading | undefined,
  end: 'dew' | 'bubble',
  refrigerant: Refrigerant,
  site: Measure<Quantity<'absolute pressure'>>,
  problems: Problem[],
): Measure<Quantity<'temperature'>> | undefined {
  if (!reading) return undefined
  const { label } = readingKind(reading.what)
  const typed = reading.quantity as Quantity<'gauge pressure' | 'absolute pressure'>
  const absolute = toAbsolute(typed, site.quantity, label)
  if (!absolute.ok) {
    problems.push(absolute.error)
    return undefined
  }
  const { si: p, u = 0 } = absolute.value
  const at = saturationAtPressure(refrigerant, pascal(p))
  if (!at.ok) {
    problems.push({ ...at.error, field: label })
    return undefined
  }
  const T = at.value[end].temperature_K
  const value = quantity('temperature', T, u * slope(refrigerant, p, end, T))
  const name = NAMES[`${end} at ${reading.what}`] ?? end
  const from = [
    evidence(
      say`${label} ${absolute.value}`,
      undefined,
      typed.dimension === 'gauge pressure' ? [typedIn(reading), site.evidence] : [typedIn(reading)],
    ),
  ]
  return {
    quantity: value,
    evidence: evidence(say`${name} ${value}`, `equation of state of ${refrigerant.name}`, from),
  }
}

const NAMES: Readonly<Record<string, string>> = {
  'dew at suction-pressure': 'Evaporating temperature (dew)',
  'bubble at suction-pressure': 'Bubble temperature at the suction port',
  'bubble at liquid-pressure': 'Condensing temperature (bubble)',
}

/** dT/dp along the saturation line, K/Pa, by a difference of 0.1 %: only the uncertainty hangs on it. */
function slope(refrigerant: Refrigerant, p: number, end: 'dew' | 'bubble', T: number): number {
  const beside = saturationAtPressure(refrigerant, pascal(p * 0.999))
  return beside.ok ? (T - beside.value[end].temperature_K) / (p * 0.001) : 0
}
