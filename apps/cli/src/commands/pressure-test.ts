import { fail, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { judgeStandingTest, type StandingTest, type TimedReading } from '@chargewright/tightness'
import { missing, unreadable } from '../failure.ts'
import { ifGiven, readFlags } from '../read-flags.ts'
import { atmosphereAt } from '../typed-flag.ts'
import { PLAIN, typedReading } from '../typed-reading.ts'

export interface PressureTestFlags {
  readonly altitude?: string
  /** Last digits of the gauge and the thermometer, where the same ones read every time. */
  readonly gaugeStep?: string
  readonly thermometerStep?: string
}

/**
 * @param typed two or more readings in the order of time, each `0 h, 300 psig, 90 degF`
 * @param site its atmosphere, where that is known otherwise than by `--altitude`
 */
export function pressureTest(
  typed: readonly string[],
  flags: PressureTestFlags,
  site: Result<Quantity<'absolute pressure'>, Problem> = atmosphereAt(flags.altitude),
): Result<StandingTest, readonly Problem[]> {
  const readings = typed.map((text, i) => readTimed(text, `reading ${i + 1}`))
  const shared = readFlags({
    atmosphere: site,
    gauge: ifGiven(flags.gaugeStep, (text) => typedReading(text, 'pressure difference', 'gauge-step')),
    thermometer: ifGiven(flags.thermometerStep, (text) =>
      typedReading(text, 'temperature difference', 'thermometer-step'),
    ),
  })
  const unread = readings.flatMap((each) => (each.ok ? [] : each.error))
  if (unread.length > 0 || !shared.ok) return fail([...unread, ...(shared.ok ? [] : shared.error)])
  const [start, ...later] = readings.flatMap((each) => (each.ok ? [each.value] : []))
  if (!start || later.length === 0)
    return fail([missing('readings', 'two or more, each “time, pressure, temperature”')])
  const { atmosphere, gauge, thermometer } = shared.value
  if ((gauge === undefined) !== (thermometer === undefined)) {
    return fail([missing(gauge ? 'thermometer-step' : 'gauge-step', 'the steps of both instruments, or neither')])
  }
  const sameInstruments = gauge && thermometer ? { pressure: gauge, temperature: thermometer } : undefined
  const judged = judgeStandingTest([start, ...later], { atmosphere, ...(sameInstruments && { sameInstruments }) })
  return judged.ok ? judged : fail([judged.error])
}

/** A comma with a space after it, or a semicolon, parts time, pressure and temperature; `4,9 bar` stays whole. */
function readTimed(text: string, field: string): Result<TimedReading, readonly Problem[]> {
  const parts = text.split(/;|,\s/)
  const [time, pressure, temperature] = parts
  if (time === undefined || pressure === undefined || temperature === undefined || parts.length > 3) {
    return fail([unreadable(field, text, 'time, pressure and temperature, such as “12 h, 282.5 psig, 60 degF”')])
  }
  return readFlags({
    time: typedReading(time, 'duration', `${field}, time`),
    pressure: typedReading(
      pressure,
      ['gauge pressure', 'absolute pressure'],
      `${field}, pressure`,
      PLAIN.highSideGauge,
    ),
    temperature: typedReading(temperature, 'temperature', `${field}, temperature`, PLAIN.thermometer),
  })
}
