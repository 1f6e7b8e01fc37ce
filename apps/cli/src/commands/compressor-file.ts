import {
  boxRegion,
  type Compressor,
  type DewUnit,
  fitRating,
  RATED_QUANTITIES,
  RATED_UNITS,
  type RatedQuantity,
  readCoefficients,
  readRatingPoints,
  siPerUnit,
} from '@chargewright/compressor'
import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { missing, unreadable } from '../failure.ts'
import { choice, fields, list, number, parseJson, text, typed } from '../json-reader.ts'
import { ifGiven, readFlags } from '../read-flags.ts'
import { typedReading } from '../typed-reading.ts'

/** What a table of points does not say itself, as typed. */
export interface FiguresFlags {
  readonly table?: string
  readonly degrees: 'F' | 'C'
  readonly ratedSuperheat?: string
  readonly ratedReturn?: string
  readonly ratedVolts?: string
  readonly phases: '1' | '3'
}

/** @param file coefficients as CSV or JSON; with the flag `table`, a table of points */
export function compressorFigures(file: string, flags: FiguresFlags): Result<Compressor, readonly Problem[]> {
  if (flags.table === undefined) return readCompressor(file)
  const rated = readFlags({
    superheat: ifGiven(flags.ratedSuperheat, (text) => typedReading(text, 'temperature difference', 'rated-superheat')),
    gas: ifGiven(flags.ratedReturn, (text) => typedReading(text, 'temperature', 'rated-return')),
    voltage: ifGiven(flags.ratedVolts, (text) => typedReading(text, 'voltage', 'rated-volts')),
  })
  if (!rated.ok) return rated
  const { superheat, gas, voltage } = rated.value
  return fitCompressor(file, {
    table: flags.table,
    degrees: flags.degrees,
    phases: flags.phases === '3' ? 3 : 1,
    ...(superheat ? { ratedSuperheat: superheat } : {}),
    ...(gas ? { ratedReturn: gas } : {}),
    ...(voltage ? { ratedVoltage: voltage } : {}),
  })
}

/** The same as values. */
interface TableFacts {
  /** `current A`, `mass flow lb/h`: what its values are. */
  readonly table: string
  readonly degrees: 'F' | 'C'
  readonly ratedSuperheat?: Quantity<'temperature difference'>
  readonly ratedReturn?: Quantity<'temperature'>
  readonly ratedVoltage?: Quantity<'voltage'>
  readonly phases: 1 | 3
}

/** The maker's figures: ten coefficients as CSV or JSON. */
function readCompressor(file: string): Result<Compressor, readonly Problem[]> {
  if (/^\uFEFF?\s*\{/.test(file)) return fromJson(file)
  const read = readCoefficients(file)
  return read.ok ? read : fail([read.error])
}

/** The maker's figures: a table of points, to which ten coefficients are fitted. */
function fitCompressor(file: string, facts: TableFacts): Result<Compressor, readonly Problem[]> {
  const dewUnit: DewUnit = facts.degrees === 'C' ? '°C' : '°F'
  const rated = readRated(facts.table, 'table')
  if (!rated.ok) return fail([rated.error])
  const points = readRatingPoints(file, dewUnit)
  if (!points.ok) return fail([points.error])
  const fit = fitRating(rated.value.what, rated.value.unit, dewUnit, points.value)
  if (!fit.ok) return fail([fit.error])
  const { ratedSuperheat, ratedReturn, ratedVoltage, phases } = facts
  if (!ratedSuperheat && !ratedReturn) {
    return fail([missing('return gas', '--rated-superheat or --rated-return, which the table is for')])
  }
  return ok({
    ratings: [fit.value.polynomial],
    returnGas: ratedReturn
      ? { kind: 'temperature', temperature_K: ratedReturn.si }
      : { kind: 'superheat', superheat_K: ratedSuperheat!.si },
    ...(ratedVoltage ? { motor: { voltage_V: ratedVoltage.si, phases } } : {}),
  })
}

/** `mass flow lb/h`: a rated quantity and the unit of its values. */
export function readRated(
  typed: string,
  field: string,
): Result<{ readonly what: RatedQuantity; readonly unit: string }, Problem> {
  const what = RATED_QUANTITIES.find((name) => typed.startsWith(name))
  const unit = typed.slice(what?.length ?? 0).trim()
  if (what && siPerUnit(what, unit) !== undefined) return ok({ what, unit })
  const accepted = RATED_QUANTITIES.map((name) => `${name} ${Object.keys(RATED_UNITS[name])[0]}`).join(', ')
  return fail(unreadable(field, typed, `a quantity and its unit, such as ${accepted}`))
}

const FORMAT = fields(
  {
    format: choice('chargewright-compressor'),
    version: choice(1),
    degrees: choice('F', 'C'),
    ratings: list(fields({ what: choice(...RATED_QUANTITIES), unit: text, coefficients: list(number, 10) }, {}), 4),
    suction: list(typed('temperature'), 2),
    discharge: list(typed('temperature'), 2),
  },
  {
    about: text,
    returnSuperheat: typed('temperature difference'),
    returnTemperature: typed('temperature'),
    voltage: typed('voltage'),
    phases: choice(1, 3),
  },
)

function fromJson(json: string): Result<Compressor, readonly Problem[]> {
  const data = parseJson(json, 'compressor file')
  if (!data.ok) return data
  const read = FORMAT(data.value, 'compressor file')
  if (!read.ok) return read
  const { degrees, ratings, suction, discharge, returnSuperheat, returnTemperature, voltage, phases = 1 } = read.value
  const problems = [
    ...ratings.flatMap(({ what, unit, coefficients }, i) => [
      ...(siPerUnit(what, unit) === undefined
        ? [unreadable(`ratings[${i}].unit`, unit, Object.keys(RATED_UNITS[what]).join(' or '))]
        : []),
      ...(coefficients.length === 10
        ? []
        : [unreadable(`ratings[${i}].coefficients`, `${coefficients.length} numbers`, 'ten, C1 to C10')]),
    ]),
    ...(suction.length === 2 ? [] : [missing('suction', 'the least and the greatest dew temperature of the ratings')]),
    ...(discharge.length === 2 ? [] : [missing('discharge', 'the least and the greatest dew temperature')]),
    ...(returnSuperheat || returnTemperature ? [] : [missing('returnSuperheat', 'it, or returnTemperature')]),
  ]
  if (problems.length > 0) return fail(problems)
  const dewUnit: DewUnit = degrees === 'C' ? '°C' : '°F'
  const ends = ([a, b]: typeof suction) => [a!.si, b!.si].sort((x, y) => x - y) as [number, number]
  const region = boxRegion(ends(suction), ends(discharge))
  return ok({
    ratings: ratings.map((rating) => ({ ...rating, dewUnit, region })),
    returnGas: returnTemperature
      ? { kind: 'temperature', temperature_K: returnTemperature.si }
      : { kind: 'superheat', superheat_K: returnSuperheat!.si },
    ...(voltage ? { motor: { voltage_V: voltage.si, phases } } : {}),
  })
}
