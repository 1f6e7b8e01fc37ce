import type { Assessment } from '@chargewright/charging'
import { COVERAGE, type Kelvin, kelvin, pascal, type Quantity } from '@chargewright/quantity'
import { type Refrigerant, saturationAtPressure, saturationAtTemperature, stateAt } from '@chargewright/refrigerant'
import type { Reading, ReadingId, Visit } from '@chargewright/visit'

/** A state on the plate: J/kg and Pa absolute. */
export interface PlateState {
  readonly enthalpy: number
  readonly pressure: number
}

/** One of the two pressures of the cycle, as a level with its expanded uncertainty. */
export interface Level {
  readonly pressure: number
  readonly from: number
  readonly to: number
  /** The reading it was typed as, and the saturation temperature it means. */
  readonly reading: Quantity
  readonly saturation: Quantity<'temperature'>
}

/** A station whose state pressure and temperature tell, with the region it may lie in. */
export interface CyclePoint {
  readonly station: 1 | 2 | 3 | 5
  readonly temperature: Quantity<'temperature'>
  readonly state: PlateState
  /** Corners, in order around it; empty where the equations do not reach that far. */
  readonly region: readonly PlateState[]
}

/** What a visit tells of its cycle. Nothing is made up: a part that was not read is absent. */
export interface CyclePoints {
  readonly low?: Level
  readonly high?: Level
  readonly points: readonly CyclePoint[]
  /** Readings that belong to a station and are no state of the refrigerant: air and current. */
  readonly beside: Readonly<Partial<Record<1 | 4 | 6, Reading>>>
}

/**
 * The states of this visit's cycle. The pressures come from the measures of the assessment, so that atmosphere and port
 * are reckoned once; the discharge is taken to be at the pressure of the liquid line, which nobody reads there.
 */
export function cyclePoints({ readings }: Visit, { measures }: Assessment, refrigerant: Refrigerant): CyclePoints {
  const low = level(refrigerant, 'dew', measures.evaporatingTemperature?.quantity, readings['suction-pressure'])
  const high = level(refrigerant, 'bubble', measures.condensingTemperature?.quantity, readings['liquid-pressure'])
  const point = (station: CyclePoint['station'], what: ReadingId, at: Level | undefined) => {
    const temperature = readings[what]?.quantity as Quantity<'temperature'> | undefined
    return temperature && at ? (pointAt(refrigerant, station, temperature, at) ?? []) : []
  }
  const beside = {
    1: readings['return-air-dry-bulb'] ?? readings['box-temperature'],
    4: readings['condenser-entering-air'],
    6: readings['compressor-current'],
  }
  return {
    ...(low ? { low } : {}),
    ...(high ? { high } : {}),
    points: [
      point(1, 'evaporator-outlet-temperature', low),
      point(2, 'suction-temperature', low),
      point(3, 'discharge-temperature', high),
      point(5, 'liquid-temperature', high),
    ].flat(),
    beside: Object.fromEntries(Object.entries(beside).filter(([, reading]) => reading)),
  }
}

function level(
  refrigerant: Refrigerant,
  end: 'dew' | 'bubble',
  saturation: Quantity<'temperature'> | undefined,
  reading: Reading | undefined,
): Level | undefined {
  if (!saturation || !reading) return undefined
  const pressureAt = (T: number) => {
    const at = saturationAtTemperature(refrigerant, kelvin(T))
    return at.ok ? at.value[end].pressure_Pa : undefined
  }
  const pressure = pressureAt(saturation.si)
  if (pressure === undefined) return undefined
  const reach = COVERAGE * (saturation.u ?? 0)
  return {
    pressure,
    from: pressureAt(saturation.si - reach) ?? pressure,
    to: pressureAt(saturation.si + reach) ?? pressure,
    reading: reading.quantity,
    saturation,
  }
}

/** Undefined where the temperature lies on the wrong side of saturation: nothing then tells how much has evaporated. */
function pointAt(
  refrigerant: Refrigerant,
  station: CyclePoint['station'],
  temperature: Quantity<'temperature'>,
  at: Level,
): CyclePoint | undefined {
  const side = station === 5 ? 'liquid' : 'vapour'
  const lines = saturationAtPressure(refrigerant, pascal(at.pressure))
  if (!lines.ok) return undefined
  const { bubble, dew } = lines.value
  const single = side === 'liquid' ? temperature.si < bubble.temperature_K : temperature.si > dew.temperature_K
  const state = single ? beside(refrigerant, side, at.pressure, kelvin(temperature.si)) : undefined
  if (!state) return undefined
  const reach = COVERAGE * (temperature.u ?? 0)
  const corners = [
    [at.from, -reach],
    [at.from, reach],
    [at.to, reach],
    [at.to, -reach],
  ] as const
  const region = corners.flatMap(
    ([pressure, off]) => beside(refrigerant, side, pressure, kelvin(temperature.si + off)) ?? [],
  )
  return { station, temperature, state, region: region.length === corners.length ? region : [] }
}

/** The state at a pressure and a temperature, no further than the saturation line of its side. */
function beside(
  refrigerant: Refrigerant,
  side: 'liquid' | 'vapour',
  pressure: number,
  temperature: Kelvin,
): PlateState | undefined {
  const lines = saturationAtPressure(refrigerant, pascal(pressure))
  if (!lines.ok) return undefined
  const edge = lines.value[side === 'liquid' ? 'bubble' : 'dew']
  const beyond = side === 'liquid' ? temperature >= edge.temperature_K : temperature <= edge.temperature_K
  if (beyond) return { enthalpy: edge.enthalpy_J_kg, pressure }
  const at = stateAt(refrigerant, pascal(pressure), temperature)
  return at.ok ? { enthalpy: at.value.enthalpy_J_kg, pressure } : undefined
}
