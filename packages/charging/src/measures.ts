import { moistAir } from '@chargewright/moist-air'
import {
  atmosphericPressure,
  kelvin,
  type Problem,
  pascal,
  type Quantity,
  quantity,
  STANDARD_ATMOSPHERE,
  say,
  subtract,
  toAbsolute,
} from '@chargewright/quantity'
import { type Refrigerant, saturationAtPressure } from '@chargewright/refrigerant'
import { type Reading, type ReadingId, readingKind, type Visit } from '@chargewright/visit'
import { type Evidence, evidence, type Measure } from './evidence.ts'

type Temperature = Quantity<'temperature'>
type Difference = Quantity<'temperature difference'>

/** What is derived from the readings of a visit; absent where a reading it needs is absent. */
export interface Measures {
  readonly evaporatingTemperature?: Measure<Temperature>
  readonly condensingTemperature?: Measure<Temperature>
  /** Bubble at the suction port: no refrigerant there can be colder. */
  readonly coldestSuction?: Measure<Temperature>
  /** At the compressor: suction line minus dew at the pressure of the same port. */
  readonly superheat?: Measure<Difference>
  /** At the coil outlet, with the pressure of the suction port. */
  readonly valveSuperheat?: Measure<Difference>
  readonly subcooling?: Measure<Difference>
  readonly returnWetBulb?: Measure<Temperature>
  readonly temperatureSplit?: Measure<Difference>
  readonly airflowPerCapacity?: Measure<Quantity<'specific airflow'>>
  readonly drierDrop?: Measure<Difference>
  /** Condensing temperature (bubble) above the air entering the condenser. */
  readonly condensingRise?: Measure<Difference>
}

export type MeasureId = keyof Measures

/** Measures of a visit, and the problems met on the way (a pressure outside the refrigerant's range, for instance). */
export function measure(
  visit: Visit,
  refrigerant: Refrigerant,
): { readonly measures: Measures; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const { readings } = visit
  const site = atmosphere(visit, problems)
  const typed = (id: ReadingId): Measure<Temperature> | undefined => {
    const reading = readings[id]
    return reading && { quantity: reading.quantity as Temperature, evidence: typedIn(reading) }
  }

  const evaporatingTemperature = saturation(readings['suction-pressure'], 'dew', refrigerant, site, problems)
  const condensingTemperature = saturation(readings['liquid-pressure'], 'bubble', refrigerant, site, problems)
  const returnWetBulb = typed('return-air-wet-bulb') ?? wetBulbFromHumidity(visit, site, problems)
  const enteringAir = typed('condenser-entering-air')

  return {
    problems,
    measures: present({
      evaporatingTemperature,
      condensingTemperature,
      coldestSuction: saturation(readings['suction-pressure'], 'bubble', refrigerant, site, []),
      returnWetBulb,
      superheat: difference('Superheat', typed('suction-temperature'), evaporatingTemperature),
      valveSuperheat: difference(
        'Superheat at the coil outlet',
        typed('evaporator-outlet-temperature'),
        evaporatingTemperature,
        [evidence(say`pressure at the coil outlet taken as that of the suction port`, [], 'assumption')],
      ),
      subcooling: difference('Subcooling', condensingTemperature, typed('liquid-temperature')),
      temperatureSplit: difference('Temperature split', typed('return-air-dry-bulb'), typed('supply-air-dry-bulb')),
      drierDrop: difference(
        'Temperature drop across the drier',
        typed('drier-inlet-temperature'),
        typed('drier-outlet-temperature'),
      ),
      condensingRise: difference('Condensing above entering air', condensingTemperature, enteringAir),
      airflowPerCapacity: airflowPerCapacity(visit),
    }),
  }
}

/** The leaf of every tree: the reading as it was typed. */
export function typedIn(reading: Reading): Evidence {
  const { label } = readingKind(reading.what)
  return {
    statement: say`${label} ${reading.quantity}, typed “${reading.typed}”`,
    source: reading.uncertaintySource,
    eventId: reading.eventId,
    from: [],
  }
}

function difference(
  name: string,
  warm: Measure<Temperature> | undefined,
  cold: Measure<Temperature> | undefined,
  assumptions: readonly Evidence[] = [],
): Measure<Difference> | undefined {
  if (!warm || !cold) return undefined
  const value = subtract(warm.quantity, cold.quantity)
  return { quantity: value, evidence: evidence(say`${name} ${value}`, [warm.evidence, cold.evidence, ...assumptions]) }
}

function saturation(
  reading: Reading | undefined,
  end: 'dew' | 'bubble',
  refrigerant: Refrigerant,
  site: Measure<Quantity<'absolute pressure'>>,
  problems: Problem[],
): Measure<Temperature> | undefined {
  if (!reading) return undefined
  const { label } = readingKind(reading.what)
  const typed = reading.quantity as Quantity<'gauge pressure' | 'absolute pressure'>
  const absolute = toAbsolute(typed, site.quantity, label)
  if (!absolute.ok) {
    problems.push(absolute.error)
    return undefined
  }
  const { si: p, u = 0 } = absolute.value
  const at = saturationAtPressure(refrigerant, pascal(p))
  if (!at.ok) {
    problems.push({ ...at.error, field: label })
    return undefined
  }
  const T = at.value[end].temperature_K
  const value = quantity('temperature', T, u * slope(refrigerant, p, end, T))
  const name = NAMES[`${end} at ${reading.what}`] ?? end
  const from = [
    evidence(
      say`${label} ${absolute.value}`,
      typed.dimension === 'gauge pressure' ? [typedIn(reading), site.evidence] : [typedIn(reading)],
    ),
  ]
  return {
    quantity: value,
    evidence: evidence(say`${name} ${value}`, from, `equation of state of ${refrigerant.name}`),
  }
}

const NAMES: Readonly<Record<string, string>> = {
  'dew at suction-pressure': 'Evaporating temperature (dew)',
  'bubble at suction-pressure': 'Bubble temperature at the suction port',
  'bubble at liquid-pressure': 'Condensing temperature (bubble)',
}

/** dT/dp along the saturation line, K/Pa, by a difference of 0.1 %: only the uncertainty hangs on it. */
function slope(refrigerant: Refrigerant, p: number, end: 'dew' | 'bubble', T: number): number {
  const beside = saturationAtPressure(refrigerant, pascal(p * 0.999))
  return beside.ok ? (T - beside.value[end].temperature_K) / (p * 0.001) : 0
}

function atmosphere(visit: Visit, problems: Problem[]): Measure<Quantity<'absolute pressure'>> {
  const { atmosphericPressure: typed, elevation } = visit.system.figures
  if (typed) {
    const value = typed.quantity as Quantity<'absolute pressure'>
    return { quantity: value, evidence: { ...evidence(say`atmospheric pressure ${value}`), eventId: typed.eventId } }
  }
  if (elevation) {
    const value = atmosphericPressure(elevation.quantity as Quantity<'elevation'>)
    if (value.ok) {
      const statement = say`atmospheric pressure ${value.value} at ${elevation.quantity}`
      return {
        quantity: value.value,
        evidence: { ...evidence(statement, [], 'ASHRAE Fundamentals 2017, ch. 1, eq. 3'), eventId: elevation.eventId },
      }
    }
    problems.push(value.error)
  }
  return {
    quantity: STANDARD_ATMOSPHERE,
    evidence: evidence(
      say`atmospheric pressure ${STANDARD_ATMOSPHERE}, sea level`,
      [],
      'assumption: no elevation given',
    ),
  }
}

function wetBulbFromHumidity(
  visit: Visit,
  site: Measure<Quantity<'absolute pressure'>>,
  problems: Problem[],
): Measure<Temperature> | undefined {
  const dry = visit.readings['return-air-dry-bulb']
  const humidity = visit.readings['return-air-humidity']
  if (!dry || !humidity) return undefined
  const wetBulb = (T: number, RH: number) =>
    moistAir(kelvin(T), { relativeHumidity: Math.min(RH, 1) }, pascal(site.quantity.si))
  const { si: T, u: uT = 0 } = dry.quantity
  const { si: RH, u: uRH = 0 } = humidity.quantity
  const air = wetBulb(T, RH)
  if (!air.ok) {
    problems.push(air.error)
    return undefined
  }
  // Shifts of one standard uncertainty carry it through the psychrometric equations (JCGM 100:2008, 5.1.3, note 2).
  const warmer = wetBulb(T + uT, RH)
  const drier = wetBulb(T, Math.max(RH - uRH, 0.01))
  const shift = (moved: typeof air | ReturnType<typeof wetBulb>) =>
    moved.ok ? moved.value.wetBulb_K - air.value.wetBulb_K : 0
  const value = quantity('temperature', air.value.wetBulb_K, Math.hypot(shift(warmer), shift(drier)))
  return {
    quantity: value,
    evidence: evidence(
      say`Return air, wet bulb ${value}`,
      [typedIn(dry), typedIn(humidity), site.evidence],
      'ASHRAE Fundamentals 2017, ch. 1',
    ),
  }
}

function airflowPerCapacity(visit: Visit): Measure<Quantity<'specific airflow'>> | undefined {
  const airflow = visit.readings.airflow
  const capacity = visit.system.figures.nominalCapacity
  if (!airflow || !capacity || !(capacity.quantity.si > 0)) return undefined
  const { si: flow, u = 0 } = airflow.quantity
  const value = quantity('specific airflow', flow / capacity.quantity.si, u / capacity.quantity.si)
  const nominal = {
    ...evidence(say`nominal capacity ${capacity.quantity}, typed “${capacity.typed}”`),
    eventId: capacity.eventId,
  }
  return { quantity: value, evidence: evidence(say`Airflow ${value}`, [typedIn(airflow), nominal]) }
}

type Possible<T> = { readonly [K in keyof T]-?: T[K] | undefined }

function present(measures: Possible<Measures>): Measures {
  return Object.fromEntries(Object.entries(measures).filter(([, value]) => value !== undefined)) as Measures
}
