import { sitePressure } from '@chargewright/charging'
import {
  type AirStream,
  airflowByElectricHeat,
  airflowByFanTable,
  airflowByPressureDrop,
  airflowByTraverse,
  airStream,
  PLAIN_ANEMOMETER,
  PLAIN_MANOMETER,
  readAirflowTable,
} from '@chargewright/moist-air'
import {
  type Dimension,
  kelvin,
  ok,
  type Problem,
  parse,
  type Quantity,
  quantity,
  type Result,
} from '@chargewright/quantity'
import { fold, instrumentSort, measured, type Visit } from '@chargewright/visit'
import { readDuct } from '../steps/typed-duct.ts'
import type { AirflowWay, Tasks } from './protocol.ts'

/** Finds an airflow in the air that the visit read at the return; else in usual air. */
export const airflowOf: Tasks['airflow'] = (events, way) => {
  const stream = streamOf(fold(events))
  if (!stream.ok) return stream
  switch (way.kind) {
    case 'electric-heat':
      return byHeat(way, stream.value)
    case 'traverse':
      return byTraverse(way, stream.value)
    case 'pressure-drop':
    case 'fan-table':
      return byTable(way, stream.value)
  }
}

/** 70 °F, give or take ten: common practice. */
const USUAL_AIR = quantity('temperature', (70 + 459.67) / 1.8, 10 / 1.8 / 2)

function streamOf(visit: Visit): Result<AirStream, Problem> {
  const { 'return-air-dry-bulb': dry, 'return-air-wet-bulb': wet, 'return-air-humidity': humidity } = visit.readings
  const air = (dry?.quantity as Quantity<'temperature'> | undefined) ?? USUAL_AIR
  const { quantity: atmosphere } = sitePressure(visit, [])
  if (dry && wet) return airStream(air, atmosphere, { wetBulb: kelvin(wet.quantity.si) })
  return airStream(air, atmosphere, dry && humidity && { relativeHumidity: humidity.quantity.si })
}

function read<D extends Dimension>(
  typed: string,
  dimension: D,
  field: string,
  plain: Parameters<typeof measured>[2],
): Result<Quantity<D>, Problem> {
  const found = measured(typed, [dimension], plain, undefined, field)
  return found.ok ? ok(found.value.quantity) : found
}

function byHeat(way: Extract<AirflowWay, { readonly kind: 'electric-heat' }>, stream: AirStream) {
  const voltage = read(way.volts, 'voltage', 'Volts at the heater', instrumentSort('voltmeter').accuracy)
  if (!voltage.ok) return voltage
  const current = read(way.amps, 'current', 'Amps in one line', instrumentSort('clamp-ammeter').accuracy)
  if (!current.ok) return current
  const rise = parse(way.rise, 'temperature difference', { field: 'Rise of the air' })
  if (!rise.ok) return rise
  const blower = way.blower === undefined ? undefined : parse(way.blower, 'power', { field: 'Blower' })
  if (blower && !blower.ok) return blower
  // The rise is the difference of two thermometers.
  const u = (Math.SQRT2 * instrumentSort('air-thermometer').accuracy.limit) / Math.sqrt(6)
  return airflowByElectricHeat(
    {
      phases: way.phases,
      voltage: voltage.value,
      current: current.value,
      rise: quantity('temperature difference', rise.value.si, u),
      blower_W: blower?.value.si ?? 0,
    },
    stream,
  )
}

function byTraverse(way: Extract<AirflowWay, { readonly kind: 'traverse' }>, stream: AirStream) {
  const duct = readDuct(way.duct)
  if (!duct.ok) return duct
  const velocities: number[] = []
  let error = 0
  for (const [i, typed] of way.readings.entries()) {
    const velocity = read(typed, 'velocity', `Point ${i + 1}`, PLAIN_ANEMOMETER)
    if (!velocity.ok) return velocity
    velocities.push(velocity.value.si)
    error += (velocity.value.u ?? 0) / way.readings.length
  }
  return airflowByTraverse(duct.value, { kind: 'velocity', velocities_m_s: velocities, u_m_s: error }, stream)
}

function byTable(way: Extract<AirflowWay, { readonly table: string }>, stream: AirStream) {
  const table = readAirflowTable(way.table)
  if (!table.ok) return table
  const field = way.kind === 'fan-table' ? 'External static pressure' : 'Pressure drop'
  const pressure = read(way.pressure, 'pressure difference', field, PLAIN_MANOMETER)
  if (!pressure.ok) return pressure
  return way.kind === 'fan-table'
    ? airflowByFanTable(
        table.value.map((entry) => ({ airflow: entry.airflow, externalStatic: entry.pressure })),
        pressure.value,
        stream,
      )
    : airflowByPressureDrop(
        table.value.map((entry) => ({ airflow: entry.airflow, drop: entry.pressure })),
        pressure.value,
        stream,
      )
}
