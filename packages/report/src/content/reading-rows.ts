import type { Assessment, MeasureId, MethodId } from '@chargewright/charging'
import {
  problemStatement,
  type Statement,
  say,
  type Tell,
  type UnitPreference,
  type Words,
} from '@chargewright/quantity'
import { READING_IDS, type ReadingId, readingKind, STATIONS, type Visit } from '@chargewright/visit'
import type { Citations } from './citations.ts'
import { type QuantityCell, quantityCell } from './quantity-cell.ts'

/** The last standing reading of its kind, with those before it. */
export interface ReadingRow {
  readonly station: number
  /** The same in every language. */
  readonly what: ReadingId
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
  tell: Tell,
  words: Words,
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
        what: id,
        label: tell(say`${label}`),
        typed: reading.typed,
        quantity: quantityCell(reading.quantity, preference, words),
        at: reading.at,
        source: cite(reading.uncertaintySource),
        earlier: history
          .filter(({ what, eventId }) => what === id && eventId !== reading.eventId)
          .map(({ typed, at }) => ({ typed, at })),
        corrected: log.some(({ id: entry, correctedBy }) => entry === reading.eventId && correctedBy !== undefined),
        ...(doubt ? { doubt: tell(problemStatement(doubt.problem)) } : {}),
      },
    ]
  })
}

/** A derived value. */
export interface MeasureRow {
  /** The same in every language. */
  readonly what: MeasureId | 'target'
  readonly label: string
  readonly quantity: QuantityCell
}

const MEASURES: Readonly<Record<MeasureId, Statement>> = {
  superheat: say`Superheat at the compressor`,
  valveSuperheat: say`Superheat at the coil outlet`,
  subcooling: say`Subcooling`,
  evaporatingTemperature: say`Evaporating temperature (dew)`,
  condensingTemperature: say`Condensing temperature (bubble)`,
  returnWetBulb: say`Return air, wet bulb`,
  temperatureSplit: say`Temperature split`,
  airflowPerCapacity: say`Airflow per capacity`,
  drierDrop: say`Temperature drop across the drier`,
  condensingRise: say`Condensing above entering air`,
}

const TARGETS: Readonly<Record<MethodId, Statement>> = {
  superheat: say`Target superheat`,
  subcooling: say`Target subcooling`,
  'sight-glass': say`Target`,
  weight: say`Charge to weigh in`,
}

/** Derived values worth reading beside what was typed; those that only repeat a reading are left out. */
export function measureRows(
  { measures, target, method }: Assessment,
  { readings }: Visit,
  preference: UnitPreference,
  tell: Tell,
  words: Words,
): readonly MeasureRow[] {
  const repeated = readings['return-air-wet-bulb'] ? 'returnWetBulb' : undefined
  const rows = (Object.keys(MEASURES) as MeasureId[]).flatMap((id) => {
    const measure = measures[id]
    return measure && id !== repeated
      ? [{ what: id, label: tell(MEASURES[id]), quantity: quantityCell(measure.quantity, preference, words) }]
      : []
  })
  const label = tell(method ? TARGETS[method.id] : say`Target`)
  return target
    ? [{ what: 'target', label, quantity: quantityCell(target.quantity, preference, words) }, ...rows]
    : rows
}
