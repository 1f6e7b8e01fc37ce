import { assess } from '@chargewright/charging'
import {
  chargingChart,
  convergenceChart,
  DESK,
  PAGE,
  PHONE,
  plateOfVisit,
  stepsChart,
  subcoolingChart,
} from '@chargewright/picture'
import { findRefrigerant, refrigerantNames } from '@chargewright/refrigerant'
import { recordCsv, recordJson, renderPdf, serviceRecord } from '@chargewright/report'
import { fold } from '@chargewright/visit'
import { plateOf, practised } from '../practice/practised.ts'
import { airflowOf } from './airflow-of.ts'
import { compressorOf } from './compressor-of.ts'
import { cylindersOf } from './cylinders-of.ts'
import { leakRateOf } from './leak-rate-of.ts'
import type { Assessed, Tasks, VisitEvents } from './protocol.ts'
import { systemHistory } from './system-history.ts'
import { tightnessOf } from './tightness-of.ts'
import { weighInOf } from './weigh-in-of.ts'

const DRAWINGS = [chargingChart, subcoolingChart, stepsChart, convergenceChart, plateOfVisit] as const

/** The work behind every task: the packages, called with what was handed over. */
export const TASKS: Tasks = {
  assess: assessed,
  draw: (events, units, size) => {
    const { assessment } = assessed(events)
    const visit = fold(events)
    const sheet = { ...(size === 'desk' ? DESK : PHONE), palette: PAGE }
    return DRAWINGS.flatMap((drawing) => drawing(visit, assessment, units, sheet) ?? [])
  },
  record: async (events, options) => {
    const { assessment } = assessed(events)
    return new Uint8Array(await renderPdf(serviceRecord(fold(events), assessment, options)))
  },
  history: (visits, units) => systemHistory(visits, units, (visit) => assessed(visit).assessment),
  practicePlate: plateOf,
  practise: practised,
  recordText: (events, options, form) => {
    const write = form === 'csv' ? recordCsv : recordJson
    return write(fold(events), assessed(events).assessment, options)
  },
  tightness: tightnessOf,
  airflow: airflowOf,
  compressor: compressorOf,
  leakRate: leakRateOf,
  cylinders: cylindersOf,
  weighIn: weighInOf,
  refrigerants: refrigerantNames,
}

/** Answers kept, the latest last: a picture is drawn of the visit that was just assessed. */
const known = new Map<string, Assessed>()
const KEPT = 32

function assessed(events: VisitEvents): Assessed {
  const key = JSON.stringify([events.id, events.events])
  const answer = known.get(key) ?? assessAnew(events)
  known.delete(key)
  known.set(key, answer)
  const [oldest] = known.keys()
  if (known.size > KEPT && oldest !== undefined) known.delete(oldest)
  return answer
}

function assessAnew(events: VisitEvents): Assessed {
  const visit = fold(events)
  const assessment = assess(visit)
  const { refrigerant } = visit.system.facts
  const found = refrigerant === undefined ? undefined : findRefrigerant(refrigerant)
  return found?.ok ? { assessment, refrigerant: found.value.name } : { assessment }
}
