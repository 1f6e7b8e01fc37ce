import {
  type Compressor,
  type Expected,
  expectedRating,
  judgeRating,
  type Operating,
  type RatingJudgement,
} from '@chargewright/compressor'
import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import { missing } from '../failure.ts'
import { withNearNames } from '../near-names.ts'
import { ifGiven, readFlags } from '../read-flags.ts'
import { atmosphereAt } from '../typed-flag.ts'
import { PLAIN, typedReading } from '../typed-reading.ts'
import { fitCompressor, readCompressor } from './compressor-file.ts'
import { dewTemperature } from './dew-temperature.ts'
import { measuredGas } from './measured-gas.ts'

/** The compressor as found, and what a table of points does not say of itself; as typed. */
export interface CompressorFlags {
  /** A dew temperature, or a pressure of the refrigerant. */
  readonly suction: string
  readonly discharge: string
  readonly refrigerant?: string
  readonly returnGas?: string
  readonly altitude?: string
  readonly volts?: string
  readonly amps?: string
  readonly table?: string
  readonly degrees: 'F' | 'C'
  readonly ratedSuperheat?: string
  readonly ratedReturn?: string
  readonly ratedVolts?: string
  readonly phases: '1' | '3'
}

/** What a sound compressor would show, each rating that the file has, and the measured current against it. */
export interface CompressorAnswer {
  readonly suctionDew: Quantity<'temperature'>
  readonly dischargeDew: Quantity<'temperature'>
  readonly expected: readonly Expected[]
  readonly judgement?: RatingJudgement
  /** Return gas was not given, and taken as rated. */
  readonly gasAssumed: boolean
}

/** @param file coefficients as CSV or JSON; with the flag `table`, a table of points */
export function compressor(file: string, flags: CompressorFlags): Result<CompressorAnswer, readonly Problem[]> {
  const figures = figuresOf(file, flags)
  const found = readFlags({
    voltage: ifGiven(flags.volts, (text) => typedReading(text, 'voltage', 'volts', PLAIN.voltmeter)),
    current: ifGiven(flags.amps, (text) => typedReading(text, 'current', 'amps', PLAIN.ammeter)),
    returnGas: ifGiven(flags.returnGas, (text) => typedReading(text, 'temperature', 'return-gas', PLAIN.thermometer)),
    atmosphere: atmosphereAt(flags.altitude),
    refrigerant: ifGiven(flags.refrigerant, (name) => withNearNames(findRefrigerant(name))),
  })
  if (!figures.ok || !found.ok) return fail([...(figures.ok ? [] : figures.error), ...(found.ok ? [] : found.error)])
  const { voltage, current, returnGas, refrigerant, atmosphere } = found.value
  const site = { atmosphere, ...(refrigerant ? { refrigerant } : {}) }
  const dews = readFlags({
    suction: dewTemperature(flags.suction, 'suction', { gauge: PLAIN.suctionGauge, ...site }),
    discharge: dewTemperature(flags.discharge, 'discharge', { gauge: PLAIN.highSideGauge, ...site }),
  })
  if (!dews.ok) return dews
  const { suction, discharge } = dews.value
  const gas = returnGas
    ? measuredGas(figures.value, suction.si, discharge.si, returnGas.si, refrigerant)
    : ok({ kind: 'as-rated' } as const)
  if (!gas.ok) return fail([gas.error])
  const operating: Operating = {
    suctionDew: suction,
    dischargeDew: discharge,
    gas: gas.value,
    ...(voltage ? { voltage } : {}),
  }
  const answer = { suctionDew: suction, dischargeDew: discharge, gasAssumed: !returnGas }
  return judged(figures.value, operating, current, answer)
}

function judged(
  figures: Compressor,
  operating: Operating,
  current: Quantity<'current'> | undefined,
  answer: Omit<CompressorAnswer, 'expected'>,
): Result<CompressorAnswer, readonly Problem[]> {
  // Capacity would need the liquid too, which nobody reads at a compressor.
  const asked = figures.ratings.filter(({ what }) => what !== 'capacity' || operating.gas.kind === 'as-rated')
  const all = asked.map(({ what }) => expectedRating(figures, what, operating))
  // Outside the range of one rating means outside that of all.
  const refused = all.find((each) => !each.ok)
  if (refused && !refused.ok) return fail([refused.error])
  const expected = all.flatMap((each) => (each.ok ? [each.value] : []))
  if (expected.length === 0) return fail([missing('ratings', 'a rating of mass flow, power or current')])
  if (!current) return ok({ ...answer, expected })
  const draw = expected.find(({ rating }) => rating.what === 'current')
  if (!draw) return fail([missing('rating of the current', 'a file with it, since amps were measured')])
  const judgement = judgeRating(draw, { what: 'current', si: current.si, u: current.u ?? 0 })
  return judgement.ok ? ok({ ...answer, expected, judgement: judgement.value }) : fail([judgement.error])
}

function figuresOf(file: string, flags: CompressorFlags): Result<Compressor, readonly Problem[]> {
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
