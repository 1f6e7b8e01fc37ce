import { fail, findUnit, kelvin, ok, type Problem, parse, type Quantity, type Result } from '@chargewright/quantity'
import { type PressureTest, type VacuumTest, vacuumText } from '@chargewright/visit'
import { HOLD_CRITERIA, type HoldCriterion } from './hold-criterion.ts'
import { type EvacuationFinding, judgeEvacuation } from './judge-evacuation.ts'
import { judgeStandingTest, type StandingTest } from './judge-standing-test.ts'
import type { Resolution } from './pressure-change.ts'
import { type PressureLog, pressureLog } from './pressure-log.ts'
import { readPressureLog } from './read-pressure-log.ts'

/** A vacuum test of a visit with what it was judged by. */
export interface JudgedVacuum {
  readonly log: PressureLog
  readonly criterion: HoldCriterion
  readonly finding: EvacuationFinding
}

/** @returns what a vacuum test of a visit found; else what is missing in it or cannot be read */
export function vacuumTestOfVisit(test: VacuumTest): Result<JudgedVacuum, Problem> {
  const log = logOf(test)
  if (!log.ok) return log
  const criterion = criterionOf(test)
  if (!criterion.ok) return criterion
  const { resolution, coldestSpot } = test
  const finding = judgeEvacuation(log.value, {
    criterion: criterion.value,
    ...(resolution && { resolution }),
    ...(coldestSpot && { coldestSpot: kelvin(coldestSpot.si) }),
  })
  return finding.ok ? ok({ log: log.value, criterion: criterion.value, finding: finding.value }) : finding
}

/** @returns what a pressure test of a visit found; else what is missing in it or out of range */
export function pressureTestOfVisit(
  { fact, readings }: PressureTest,
  atmosphere: Quantity<'absolute pressure'>,
): Result<StandingTest, Problem> {
  const gauge = stepOf(fact.gauge, 'pressure difference', 'Last digit of the gauge')
  const thermometer = stepOf(fact.thermometer, 'temperature difference', 'Last digit of the thermometer')
  if (gauge && !gauge.ok) return gauge
  if (thermometer && !thermometer.ok) return thermometer
  const sameInstruments: Resolution | undefined =
    gauge && thermometer ? { pressure: gauge.value, temperature: thermometer.value } : undefined
  const timed = readings.map(({ after, ...reading }) => ({ ...reading, time: after }))
  return judgeStandingTest(timed, { atmosphere, ...(sameInstruments && { sameInstruments }) })
}

function logOf({ log, readings }: VacuumTest): Result<PressureLog, Problem> {
  if (log) {
    const unit = log.unit === undefined ? undefined : findUnit(vacuumText(log.unit), 'absolute pressure')
    if (log.unit !== undefined && !unit) {
      const accepted = 'a unit of absolute pressure, such as micron or Pa'
      return fail({ kind: 'unknown', field: 'Unit of the vacuum log', value: log.unit, accepted })
    }
    return readPressureLog(log.text, unit)
  }
  if (readings.length === 0) {
    const accepted = 'readings of the vacuum gauge from the shutting of the valve on'
    return fail({ kind: 'missing', field: 'Vacuum', value: 'nothing', accepted })
  }
  return pressureLog(readings.map(({ after, pressure }) => ({ elapsed_s: after.si, pressure_Pa: pressure.si })))
}

function criterionOf({ criterion, start, limit, hold }: VacuumTest): Result<HoldCriterion, Problem> {
  if (criterion !== 'maker') return ok(HOLD_CRITERIA[criterion])
  if (start && limit && hold) return ok({ start, limit, hold, source: 'the maker’s, as typed' })
  const accepted = 'the vacuum to start from, the one not to rise above, and for how long'
  return fail({ kind: 'missing', field: 'The maker’s criterion', value: 'a part of it', accepted })
}

function stepOf<D extends 'pressure difference' | 'temperature difference'>(
  instrument: PressureTest['fact']['gauge'],
  dimension: D,
  field: string,
): Result<Quantity<D>, Problem> | undefined {
  return instrument?.resolution === undefined ? undefined : parse(instrument.resolution, dimension, { field })
}
