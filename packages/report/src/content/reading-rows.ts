import type { Assessment, MeasureId, MethodId } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { describeProblem } from '@chargewright/quantity'
import { READING_IDS, readingKind, STATIONS, type Visit } from '@chargewright/visit'
import type { Citations } from './citations.ts'
import { type QuantityCell, quantityCell } from './quantity-cell.ts'

/** The last standing reading of its kind, with those before it. */
export interface ReadingRow {
  readonly station: number
  readonly label: string
  readonly typed: string
  readonly quantity: QuantityCell
  readonly at: string
  /** Number of the source of its uncertainty. */
  readonly source: number
  readonly earlier: readonly { readonly typed: string; readonly at: string }[]
  readonly corrected: boolean
  readonly doubt?: string
}

export function readingRows(
  { readings, history, log, doubts }: Visit,
  preference: UnitPreference,
  { cite }: Citations,
): readonly ReadingRow[] {
  return READING_IDS.flatMap((id) => {
    const reading = readings[id]
    if (!reading) return []
    const { label, station } = readingKind(id)
    const doubt = doubts.find(({ eventId }) => eventId === reading.eventId)
    return [
      {
        station: STATIONS.find((each) => each.id === station)!.number,
        label,
        typed: reading.typed,
        quantity: quantityCell(reading.quantity, preference),
        at: reading.at,
        source: cite(reading.uncertaintySource),
        earlier: history
          .filter(({ what, eventId }) => what === id && eventId !== reading.eventId)
          .map(({ typed, at }) => ({ typed, at })),
        corrected: log.some(({ id: entry, correctedBy }) => entry === reading.eventId && correctedBy !== undefined),
        ...(doubt ? { doubt: describeProblem(doubt.problem) } : {}),
      },
    ]
  })
}

/** A derived value. */
export interface MeasureRow {
  readonly label: string
  readonly quantity: QuantityCell
}

const MEASURES: Readonly<Record<MeasureId, string>> = {
  superheat: 'Superheat at the compressor',
  valveSuperheat: 'Superheat at the coil outlet',
  subcooling: 'Subcooling',
  evaporatingTemperature: 'Evaporating temperature (dew)',
  condensingTemperature: 'Condensing temperature (bubble)',
  returnWetBulb: 'Return air, wet bulb',
  temperatureSplit: 'Temperature split',
  airflowPerCapacity: 'Airflow per capacity',
  drierDrop: 'Temperature drop across the drier',
  condensingRise: 'Condensing above entering air',
}

const TARGETS: Readonly<Record<MethodId, string>> = {
  superheat: 'Target superheat',
  subcooling: 'Target subcooling',
  'sight-glass': 'Target',
  weight: 'Charge to weigh in',
}

/** Derived values worth reading beside what was typed; those that only repeat a reading are left out. */
export function measureRows(
  { measures, target, method }: Assessment,
  { readings }: Visit,
  preference: UnitPreference,
): readonly MeasureRow[] {
  const repeated = readings['return-air-wet-bulb'] ? 'returnWetBulb' : undefined
  const rows = (Object.keys(MEASURES) as MeasureId[]).flatMap((id) => {
    const measure = measures[id]
    return measure && id !== repeated
      ? [{ label: MEASURES[id], quantity: quantityCell(measure.quantity, preference) }]
      : []
  })
  const label = method ? TARGETS[method.id] : 'Target'
  return target ? [{ label, quantity: quantityCell(target.quantity, preference) }, ...rows] : rows
}
