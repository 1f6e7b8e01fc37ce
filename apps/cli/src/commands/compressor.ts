import {
  type CompressorAsFound,
  type Expected,
  judgeRating,
  type Operating,
  preferredExpectation,
  type RatedQuantity,
  type Rating,
  type RatingJudgement,
  type SystemAsFound,
} from '@chargewright/compressor'
import { measuredGas } from '@chargewright/cycle'
import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import { missing } from '../failure.ts'
import { withNearNames } from '../near-names.ts'
import { ifGiven, readFlags } from '../read-flags.ts'
import { atmosphereAt } from '../typed-flag.ts'
import { PLAIN, typedReading } from '../typed-reading.ts'
import { compressorFigures, type FiguresFlags } from './compressor-file.ts'
import { dewTemperature } from './dew-temperature.ts'
import { type SystemFlags, systemAsFound } from './system-as-found.ts'

/** The compressor as found, and what its figures do not say of themselves; as typed. */
export interface CompressorFlags extends FiguresFlags, SystemFlags {
  /** A dew temperature, or a pressure of the refrigerant. */
  readonly suction: string
  readonly discharge: string
  readonly refrigerant?: string
  readonly returnGas?: string
  readonly altitude?: string
  readonly volts?: string
  readonly amps?: string
  readonly watts?: string
  readonly flow?: string
}

/** What was measured of a rated quantity, against what was expected of it. */
export interface Judged {
  readonly what: RatedQuantity
  readonly judgement: RatingJudgement
}

/** What a sound compressor would show, each rating that the figures have, and what was measured against it. */
export interface CompressorAnswer {
  readonly suctionDew: Quantity<'temperature'>
  readonly dischargeDew: Quantity<'temperature'>
  readonly expected: readonly Expected[]
  /** Of power, current and mass flow, as far as they were measured. */
  readonly judged: readonly Judged[]
  /** What the curve of the whole system says, in place of the compressor's figures. */
  readonly fromSystem?: RatedQuantity
  /** Return gas was not given, and taken as rated. */
  readonly gasAssumed: boolean
}

/**
 * @param file coefficients as CSV or JSON; with the flag `table`, a table of points
 * @param curve of the whole system, as CSV
 */
export function compressor(
  file: string,
  flags: CompressorFlags,
  curve?: string,
): Result<CompressorAnswer, readonly Problem[]> {
  const figures = compressorFigures(file, flags)
  const system = systemAsFound(curve, flags)
  const found = readFlags({
    voltage: ifGiven(flags.volts, (text) => typedReading(text, 'voltage', 'volts', PLAIN.voltmeter)),
    current: ifGiven(flags.amps, (text) => typedReading(text, 'current', 'amps', PLAIN.ammeter)),
    power: ifGiven(flags.watts, (text) => typedReading(text, 'power', 'watts', PLAIN.wattmeter)),
    flow: ifGiven(flags.flow, (text) => typedReading(text, 'mass flow', 'flow', PLAIN.flowmeter)),
    returnGas: ifGiven(flags.returnGas, (text) => typedReading(text, 'temperature', 'return-gas', PLAIN.thermometer)),
    atmosphere: atmosphereAt(flags.altitude),
    refrigerant: ifGiven(flags.refrigerant, (name) => withNearNames(findRefrigerant(name))),
  })
  if (!figures.ok || !system.ok || !found.ok) {
    return fail([figures, system, found].flatMap((read) => (read.ok ? [] : read.error)))
  }
  const { voltage, current, power, flow, returnGas, refrigerant, atmosphere } = found.value
  const site = { atmosphere, ...(refrigerant ? { refrigerant } : {}) }
  const dews = readFlags({
    suction: dewTemperature(flags.suction, 'suction', { gauge: PLAIN.suctionGauge, ...site }),
    discharge: dewTemperature(flags.discharge, 'discharge', { gauge: PLAIN.highSideGauge, ...site }),
  })
  if (!dews.ok) return dews
  const { suction, discharge } = dews.value
  if (returnGas && !refrigerant) return fail([missing('refrigerant', '--refrigerant, since a return gas was given')])
  const gas =
    returnGas && refrigerant
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
  const measured = [rating('power', power), rating('current', current), rating('mass flow', flow)].flat()
  return judged({ compressor: figures.value, operating }, system.value, measured, answer)
}

const rating = (what: RatedQuantity, read: Quantity | undefined): readonly Rating[] =>
  read ? [{ what, si: read.si, u: read.u ?? 0 }] : []

function judged(
  compressor: CompressorAsFound,
  system: SystemAsFound | undefined,
  measured: readonly Rating[],
  answer: Omit<CompressorAnswer, 'expected' | 'judged'>,
): Result<CompressorAnswer, readonly Problem[]> {
  const { compressor: figures, operating } = compressor
  const fromSystem = system?.curves[0]?.what
  // Capacity would need the liquid too, which nobody reads at a compressor.
  const rated = figures.ratings
    .map(({ what }) => what)
    .filter((what) => what !== 'capacity' || operating.gas.kind === 'as-rated')
  const asked = [...new Set([...(fromSystem ? [fromSystem] : []), ...rated])]
  const all = asked.map((what) => preferredExpectation(what, { compressor, ...(system ? { system } : {}) }))
  // Figures that do not reach as far as was found give no answer in part.
  const refused = all.find((each) => !each.ok)
  if (refused && !refused.ok) return fail([refused.error])
  const expected = all.flatMap((each) => (each.ok ? [each.value] : []))
  if (expected.length === 0) return fail([missing('ratings', 'a rating of mass flow, power or current')])
  const found = measured.map((reading) => against(expected, reading))
  const problems = found.flatMap((each) => (each.ok ? [] : [each.error]))
  if (problems.length > 0) return fail(problems)
  return ok({
    ...answer,
    expected,
    judged: found.flatMap((each) => (each.ok ? [each.value] : [])),
    ...(fromSystem ? { fromSystem } : {}),
  })
}

function against(expected: readonly Expected[], measured: Rating): Result<Judged, Problem> {
  const { what } = measured
  const same = expected.find(({ rating }) => rating.what === what)
  if (!same) return fail(missing(`rating of the ${what}`, 'figures with it, since it was measured'))
  const judgement = judgeRating(same, measured)
  return judgement.ok ? ok({ what, judgement: judgement.value }) : judgement
}
