import { evidence, type Measure, type Quantity, quantity, say, subtract } from '@chargewright/quantity'
import type { ReadingId, Visit } from '@chargewright/visit'
import table from '../../data/temperature-split.json' with { type: 'json' }
import type { Condition, NextEntry } from '../assessment.ts'
import { LIMITS } from '../limit.ts'
import type { Measures } from '../measures/measures.ts'
import { typedIn } from '../measures/typed-in.ts'
import { type Grid, lookUp, spread } from '../target/chart.ts'
import { AGAIN, readAgain } from './read-again.ts'

const { airflowRefused, airflowLow, airflowHigh, splitTolerance } = LIMITS
const F = 5 / 9
const inF = (T: Quantity) => T.si / F - 459.67

const SPLITS: Grid = {
  rows: table.returnDryBulbs_F,
  columns: table.returnWetBulbs_F,
  values: table.splits_F.map((row) => row.map((cell) => cell ?? undefined)),
}
const SPLIT_SOURCE = `${splitTolerance.source}; grid recalled, unconfirmed`

/** Evidence that the indoor airflow is right: measured, or by the temperature split. Without it there is no verdict. */
export function airflow(visit: Visit, measures: Measures): Condition {
  const filter = visit.observations['air-filter']
  if (filter?.answer === 'dirty') {
    return {
      id: 'airflow',
      state: 'unmet',
      evidence: { ...evidence(say`The air filter or the indoor coil is dirty or blocked`), eventId: filter.eventId },
      remedy: say`Clean the filter and the coil, let the system settle and read again`,
      again: [{ entry: { kind: 'observation', what: 'air-filter' }, why: AGAIN }],
    }
  }
  const { airflowPerCapacity } = measures
  const judged = airflowPerCapacity
    ? judgeSpecificAirflow(airflowPerCapacity)
    : (bySplit(visit, measures) ?? unknown(visit))
  return judged.state === 'unmet' ? { ...judged, again: readAgain(visit, TELLS_AIRFLOW) } : judged
}

const TELLS_AIRFLOW: readonly ReadingId[] = [
  'airflow',
  'supply-air-dry-bulb',
  'return-air-dry-bulb',
  'return-air-wet-bulb',
]

/**
 * A measured airflow over the nominal cooling capacity: too little to judge a charge by, outside the usual band, or in it.
 *
 * @param measured m³/(s·W), with what it rests on
 * @source below 300 CFM per ton no charge is judged: RA3.2 (2008); 400 CFM per ton ± 10 %: common practice
 */
export function judgeSpecificAirflow({
  quantity: flow,
  evidence: tree,
}: Measure<Quantity<'specific airflow'>>): Condition {
  const remedy = say`Bring the airflow to 400 CFM per ton (${airflowLow.quantity} to ${airflowHigh.quantity}), let the system settle and read again`
  if (flow.si < airflowRefused.quantity.si) {
    return {
      id: 'airflow',
      state: 'unmet',
      evidence: evidence(say`Airflow ${flow} is below ${airflowRefused.quantity}`, airflowRefused.source, [tree]),
      remedy,
    }
  }
  const off = flow.si < airflowLow.quantity.si ? 'below' : flow.si > airflowHigh.quantity.si ? 'above' : undefined
  if (off) {
    const statement = say`Airflow ${flow} is ${off} the usual ${airflowLow.quantity} to ${airflowHigh.quantity}`
    return { id: 'airflow', state: 'doubtful', evidence: evidence(statement, airflowLow.source, [tree]), remedy }
  }
  return {
    id: 'airflow',
    state: 'met',
    evidence: evidence(say`Airflow ${flow} is in range`, airflowLow.source, [tree]),
  }
}

function bySplit(visit: Visit, { temperatureSplit, returnWetBulb }: Measures): Condition | undefined {
  const dryBulb = visit.readings['return-air-dry-bulb']
  if (!temperatureSplit || !returnWetBulb || !dryBulb) return undefined
  const point = [
    inF(dryBulb.quantity),
    (dryBulb.quantity.u ?? 0) / F,
    inF(returnWetBulb.quantity),
    (returnWetBulb.quantity.u ?? 0) / F,
  ] as const
  const found = lookUp(SPLITS, point[0], point[2])
  if (found.kind !== 'value') return undefined
  const expected = quantity('temperature difference', found.value * F, spread(SPLITS, ...point) * F)
  const apart = subtract(temperatureSplit.quantity, expected)
  const from = [
    temperatureSplit.evidence,
    evidence(say`Expected split ${expected}`, SPLIT_SOURCE, [typedIn(dryBulb), returnWetBulb.evidence]),
  ]
  if (apart.si > splitTolerance.quantity.si) {
    return {
      id: 'airflow',
      state: 'unmet',
      evidence: evidence(
        say`The temperature split is ${apart} above the expected one: too little air`,
        `${splitTolerance.source}; this side recalled, unconfirmed`,
        from,
      ),
      remedy: say`Put the airflow right (filter, coil, blower, ducts), let the system settle and read again`,
    }
  }
  if (apart.si < -splitTolerance.quantity.si) {
    const statement = say`The temperature split is below the expected one by more than ${splitTolerance.quantity}: air is not short, the capacity is`
    return { id: 'airflow', state: 'doubtful', evidence: evidence(statement, SPLIT_SOURCE, from) }
  }
  return {
    id: 'airflow',
    state: 'met',
    evidence: evidence(
      say`The temperature split is within ${splitTolerance.quantity} of the expected one`,
      SPLIT_SOURCE,
      from,
    ),
  }
}

/** The shortest way from here to evidence: whichever reading completes one of the two. */
function unknown(visit: Visit): Condition {
  const { readings, system } = visit
  const why = say`little air looks like a wrong charge`
  const missing: NextEntry['entry'] =
    readings.airflow && !system.figures.nominalCapacity
      ? { kind: 'figure', what: 'nominalCapacity' }
      : !readings['return-air-dry-bulb'] && !readings.airflow && readings['supply-air-dry-bulb']
        ? { kind: 'reading', what: 'return-air-dry-bulb' }
        : readings['return-air-dry-bulb'] && !readings['supply-air-dry-bulb'] && !readings.airflow
          ? { kind: 'reading', what: 'supply-air-dry-bulb' }
          : { kind: 'reading', what: 'airflow' }
  return {
    id: 'airflow',
    state: 'unknown',
    evidence: evidence(say`Nothing tells whether the indoor airflow is right`),
    remedy: say`Measure the airflow, or read return air (dry and wet bulb) and supply air`,
    next: { entry: missing, why },
  }
}
