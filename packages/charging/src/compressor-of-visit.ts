import {
  type Compressor,
  type Expected,
  expectedRating,
  judgeRating,
  type Operating,
  type RatedQuantity,
  type Rating,
  type RatingJudgement,
  readCoefficients,
} from '@chargewright/compressor'
import { measuredGas } from '@chargewright/cycle'
import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { findRefrigerant, type Refrigerant } from '@chargewright/refrigerant'
import { type ReadingId, readingKind, type Visit } from '@chargewright/visit'
import { dewAt } from './measures/dew-at.ts'
import { sitePressure } from './measures/site-pressure.ts'

/** A compressor by its maker's figures, how it runs, and what its readings say. */
export interface CompressorOfVisit {
  readonly compressor: Compressor
  readonly operating: Operating
  readonly expected: readonly Expected[]
  /** Of power and current, as far as they were read. */
  readonly judged: readonly JudgedRating[]
  /** The suction line was not read, and its gas taken as rated. */
  readonly gasAssumed: boolean
}

export interface JudgedRating extends RatingJudgement {
  readonly measured: Rating
}

/** What a rated quantity is read as. */
const READ_AS = [
  ['power', 'compressor-power'],
  ['current', 'compressor-current'],
] as const satisfies readonly (readonly [RatedQuantity, ReadingId])[]

/**
 * Power and current of a visit against the maker's figures, at the dew temperatures of both ports and the voltage read.
 *
 * @returns nothing where the visit knows no figures; else what cannot be read of them, or is missing to judge by them
 */
export function compressorOfVisit(visit: Visit): Result<CompressorOfVisit, Problem> | undefined {
  const { compressorRating } = visit.system.facts
  return compressorRating === undefined ? undefined : againstFigures(compressorRating, visit)
}

function againstFigures(figures: string, visit: Visit): Result<CompressorOfVisit, Problem> {
  const compressor = readCoefficients(figures)
  if (!compressor.ok) return compressor
  const operating = operatingAsRead(compressor.value, visit)
  if (!operating.ok) return operating
  const expected = []
  const judged = []
  for (const [what, id] of READ_AS) {
    if (!compressor.value.ratings.some((rating) => rating.what === what)) continue
    const rated = expectedRating(compressor.value, what, operating.value)
    if (!rated.ok) return rated
    expected.push(rated.value)
    const reading = visit.readings[id]?.quantity
    if (!reading) continue
    const measured = { what, si: reading.si, u: reading.u ?? 0 }
    const judgement = judgeRating(rated.value, measured)
    if (!judgement.ok) return judgement
    judged.push({ measured, ...judgement.value })
  }
  const gasAssumed = operating.value.gas.kind === 'as-rated'
  return ok({ compressor: compressor.value, operating: operating.value, expected, judged, gasAssumed })
}

function operatingAsRead(compressor: Compressor, visit: Visit): Result<Operating, Problem> {
  const refrigerant = findRefrigerant(visit.system.facts.refrigerant ?? '')
  if (!refrigerant.ok) return refrigerant
  const suction = dewAtPort('suction-pressure', visit, refrigerant.value)
  if (!suction.ok) return suction
  const discharge = dewAtPort('liquid-pressure', visit, refrigerant.value)
  if (!discharge.ok) return discharge
  const returnGas = visit.readings['suction-temperature']?.quantity
  const gas = returnGas
    ? measuredGas(compressor, suction.value.si, discharge.value.si, returnGas.si, refrigerant.value)
    : ok({ kind: 'as-rated' } as const)
  if (!gas.ok) return gas
  const voltage = visit.readings['supply-voltage']?.quantity as Quantity<'voltage'> | undefined
  return ok({
    suctionDew: suction.value,
    dischargeDew: discharge.value,
    gas: gas.value,
    ...(voltage && { voltage }),
  })
}

function dewAtPort(id: ReadingId, visit: Visit, refrigerant: Refrigerant): Result<Quantity<'temperature'>, Problem> {
  const { label } = readingKind(id)
  const reading = visit.readings[id]
  if (!reading) return fail({ kind: 'missing', field: label, value: 'nothing', accepted: 'a reading of it' })
  const pressure = reading.quantity as Quantity<'gauge pressure' | 'absolute pressure'>
  return dewAt(pressure, sitePressure(visit, []).quantity, refrigerant, label)
}
