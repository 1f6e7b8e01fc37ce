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
import { refrigerantNames } from '@chargewright/refrigerant'
import { recordCsv, recordJson, renderPdf, serviceRecord } from '@chargewright/report'
import { fold } from '@chargewright/visit'
import { plateOf, practised } from '../practice/practised.ts'
import { airflowOf } from './airflow-of.ts'
import { assessed, taughtBy } from './assessed.ts'
import { compressorOf } from './compressor-of.ts'
import { cylindersOf } from './cylinders-of.ts'
import { leakRateOf } from './leak-rate-of.ts'
import type { Tasks } from './protocol.ts'
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
    const { assessment, learntFrom } = assessed(events)
    return new Uint8Array(await renderPdf(serviceRecord(fold(events), assessment, { ...options, learntFrom })))
  },
  history: systemHistory,
  learntFrom: (visits) => taughtBy(visits)?.visits ?? 0,
  practicePlate: plateOf,
  practise: practised,
  recordText: (events, options, form) => {
    const { assessment, learntFrom } = assessed(events)
    const write = form === 'csv' ? recordCsv : recordJson
    return write(fold(events), assessment, { ...options, learntFrom })
  },
  tightness: tightnessOf,
  airflow: airflowOf,
  compressor: compressorOf,
  leakRate: leakRateOf,
  cylinders: cylindersOf,
  weighIn: weighInOf,
  refrigerants: refrigerantNames,
}
