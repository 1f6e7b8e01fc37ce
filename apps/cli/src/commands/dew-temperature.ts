import { dewAt } from '@chargewright/charging'
import { fail, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import { missing } from '../failure.ts'
import { type Accuracy, typedReading } from '../typed-reading.ts'

/** What a pressure needs to become a dew temperature. */
export interface Port {
  readonly gauge: Accuracy
  readonly atmosphere: Quantity<'absolute pressure'>
  readonly refrigerant?: Refrigerant
}

/** A dew temperature as typed, exact unless it has a ±; or that of the pressure typed, with the gauge's uncertainty. */
export function dewTemperature(
  text: string,
  field: string,
  { gauge, atmosphere, refrigerant }: Port,
): Result<Quantity<'temperature'>, Problem> {
  const read = typedReading(text, ['temperature', 'gauge pressure', 'absolute pressure'], field)
  if (!read.ok) return read
  if (read.value.dimension === 'temperature') return typedReading(text, 'temperature', field)
  if (!refrigerant) return fail(missing('refrigerant', '--refrigerant, since a pressure was given'))
  const pressure = typedReading(text, ['gauge pressure', 'absolute pressure'], field, gauge)
  if (!pressure.ok) return pressure
  return dewAt(pressure.value, atmosphere, refrigerant, field)
}
