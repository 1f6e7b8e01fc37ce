import { readSystemCurve, type SystemAsFound } from '@chargewright/compressor'
import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { missing } from '../failure.ts'
import { readFlags } from '../read-flags.ts'
import { PLAIN, typedReading } from '../typed-reading.ts'
import { readRated } from './compressor-file.ts'

/** What the curve of a whole system does not say itself, and the air that it stands in; as typed. */
export interface SystemFlags {
  /** `power W`: what its values are. */
  readonly curveOf?: string
  readonly outdoor?: string
  readonly box?: string
  readonly degrees: 'F' | 'C'
}

/**
 * The maker's performance curve of the whole system at the temperatures as found.
 *
 * @param curve CSV: box or return temperatures along the top, outdoor temperatures down the side
 * @returns nothing where neither a curve nor a flag of one was given
 */
export function systemAsFound(
  curve: string | undefined,
  { curveOf, outdoor, box, degrees }: SystemFlags,
): Result<SystemAsFound | undefined, readonly Problem[]> {
  if (curve === undefined) {
    const idle = curveOf ?? outdoor ?? box
    return idle === undefined ? ok(undefined) : fail([missing('curve', '--curve, for its flags were given')])
  }
  const read = readFlags({
    rated: needed(curveOf, 'curve-of', 'what its values are: "power W"', (text) => readRated(text, 'curve-of')),
    outdoor: needed(outdoor, 'outdoor', 'the air entering the condenser: "95 degF"', thermometer('outdoor')),
    box: needed(box, 'box', 'the air in the box, or returning: "38 degF"', thermometer('box')),
  })
  if (!read.ok) return read
  const { rated, ...air } = read.value
  const system = readSystemCurve(curve, rated.what, rated.unit, degrees === 'C' ? '°C' : '°F')
  return system.ok ? ok({ curves: [system.value], ...air }) : fail([system.error])
}

const thermometer = (field: string) => (text: string) => typedReading(text, 'temperature', field, PLAIN.thermometer)

const needed = <Value>(
  text: string | undefined,
  field: string,
  accepted: string,
  read: (text: string) => Result<Value, Problem>,
): Result<Value, Problem> => (text === undefined ? fail(missing(field, accepted)) : read(text))
