import { type Condition, judgeSpecificAirflow, LIMITS } from '@chargewright/charging'
import {
  type Airflow,
  type AirStream,
  airflowByElectricHeat,
  airflowByFanTable,
  airflowByPressureDrop,
  airStream,
  type Humidity,
  readAirflowTable,
} from '@chargewright/moist-air'
import {
  evidence,
  fail,
  kelvin,
  ok,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import { ifGiven, readFlags } from '../read-flags.ts'
import { atmosphereAt, typedShare } from '../typed-flag.ts'
import { PLAIN, typedReading } from '../typed-reading.ts'

/** An airflow that was found, over the capacity where that was given. */
export interface AirflowAnswer {
  readonly airflow: Airflow
  readonly perCapacity?: {
    readonly quantity: Quantity<'specific airflow'>
    /** As a charge is judged by it. */
    readonly condition: Condition
  }
  /** The air was not read and taken as usual. */
  readonly airAssumed: boolean
}

/** The air that flows, as typed; the same for every way of finding how much. */
export interface AirFlags {
  readonly air?: string
  readonly humidity?: string
  readonly altitude?: string
  readonly tons?: string
}

export interface HeatFlags extends AirFlags {
  readonly volts: string
  readonly amps: string
  readonly rise: string
  readonly phases: '1' | '3'
  readonly blower?: string
}

type Answered = Result<AirflowAnswer, readonly Problem[]>

export function airflowByHeat(flags: HeatFlags): Answered {
  const heat = readFlags({
    voltage: typedReading(flags.volts, 'voltage', 'volts', PLAIN.voltmeter),
    current: typedReading(flags.amps, 'current', 'amps', PLAIN.ammeter),
    rise: typedReading(flags.rise, 'temperature difference', 'rise', TWO_THERMOMETERS),
    blower: ifGiven(flags.blower, (text) => typedReading(text, 'cooling capacity', 'blower')),
  })
  return inStream(flags, heat, ({ voltage, current, rise, blower }, stream) => {
    const phases = flags.phases === '3' ? 3 : 1
    return airflowByElectricHeat({ phases, voltage, current, rise, blower_W: blower?.si ?? 0 }, stream)
  })
}

/** @param table CSV of airflow and pressure drop, with their units in the heading */
export function airflowByDrop(table: string, flags: AirFlags & { readonly drop: string }): Answered {
  const read = readFlags({
    table: readAirflowTable(table),
    drop: typedReading(flags.drop, 'pressure difference', 'drop', PLAIN.manometer),
  })
  return inStream(flags, read, (given, stream) => {
    const entries = given.table.map(({ airflow, pressure }) => ({ airflow, drop: pressure }))
    return airflowByPressureDrop(entries, given.drop, stream)
  })
}

/** @param table CSV of external static pressure and airflow, with their units in the heading */
export function airflowByFan(table: string, flags: AirFlags & { readonly static: string }): Answered {
  const read = readFlags({
    table: readAirflowTable(table),
    static: typedReading(flags.static, 'pressure difference', 'static', PLAIN.manometer),
  })
  return inStream(flags, read, (given, stream) => {
    const entries = given.table.map(({ airflow, pressure }) => ({ airflow, externalStatic: pressure }))
    return airflowByFanTable(entries, given.static, stream)
  })
}

/** The rise is the difference of two thermometers. */
const TWO_THERMOMETERS = { ...PLAIN.thermometer, limit: PLAIN.thermometer.limit * Math.SQRT2 }

/** 70 °F, give or take ten: common practice. */
const USUAL_AIR = quantity('temperature', (70 + 459.67) / 1.8, 10 / 1.8 / 2)

/** Finds an airflow from the values of its own flags, in the air that the shared flags describe. */
export function inStream<Values>(
  flags: AirFlags,
  own: Result<Values, readonly Problem[]>,
  find: (values: Values, stream: AirStream) => Result<Airflow, Problem>,
): Answered {
  const shared = readFlags({
    air: ifGiven(flags.air, (text) => typedReading(text, 'temperature', 'air', PLAIN.thermometer)),
    humidity: ifGiven(flags.humidity, (text) => typedHumidity(text)),
    atmosphere: atmosphereAt(flags.altitude),
    capacity: ifGiven(flags.tons, (text) => typedReading(text, 'cooling capacity', 'tons')),
  })
  if (!own.ok || !shared.ok) return fail([...(own.ok ? [] : own.error), ...(shared.ok ? [] : shared.error)])
  const { air = USUAL_AIR, humidity, atmosphere, capacity } = shared.value
  const stream = airStream(air, atmosphere, humidity)
  if (!stream.ok) return fail([stream.error])
  const airflow = find(own.value, stream.value)
  if (!airflow.ok) return fail([airflow.error])
  const answer = { airflow: airflow.value, airAssumed: flags.air === undefined }
  if (capacity === undefined) return ok(answer)
  if (!(capacity.si >= LEAST_CAPACITY_W)) return fail([tooSmall(capacity.si)])
  return ok({ ...answer, perCapacity: overCapacity(airflow.value, capacity) })
}

/** A tenth of a kilowatt: no system with ducts is smaller. */
const LEAST_CAPACITY_W = 100
const tooSmall = (value: number): Problem => ({
  kind: 'out-of-range',
  field: 'tons',
  value,
  min: LEAST_CAPACITY_W,
  max: 1e9,
  unit: 'W',
})

/** A wet bulb with its unit of temperature, or a share of saturation. */
function typedHumidity(text: string): Result<Humidity, Problem> {
  if (!text.includes('%')) {
    const wetBulb = typedReading(text, 'temperature', 'humidity')
    return wetBulb.ok ? ok({ wetBulb: kelvin(wetBulb.value.si) }) : wetBulb
  }
  const share = typedShare(text.replace(/RH/i, ''), 'humidity')
  return share.ok ? ok({ relativeHumidity: share.value }) : share
}

function overCapacity({ airflow }: Airflow, capacity: Quantity<'cooling capacity'>) {
  const { airflowLow, airflowHigh } = LIMITS
  const value = quantity('specific airflow', airflow.si / capacity.si, (airflow.u ?? 0) / capacity.si)
  const usual = say`usual are ${airflowLow.quantity} to ${airflowHigh.quantity}`
  const measured = evidence(say`Airflow ${value} at ${capacity}; ${usual}`, airflowLow.source)
  return { quantity: value, condition: judgeSpecificAirflow({ quantity: value, evidence: measured }) }
}
