import { assess } from '@chargewright/charging'
import { leakRateOfSystem } from '@chargewright/ledger'
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
import { readRefrigerantName, refrigerantNames } from '@chargewright/refrigerant'
import {
  leakRateChecks,
  type RecordOptions,
  recordCsv,
  recordJson,
  renderPdf,
  serviceRecord,
} from '@chargewright/report'
import { fold } from '@chargewright/visit'
import { plateOf, practised } from '../practice/practised.ts'
import type { SystemSoFar } from '../session/system-so-far.ts'
import { wordsOf } from '../words/language.ts'
import { airflowOf } from './airflow-of.ts'
import { assessed, taughtBy } from './assessed.ts'
import { compressorOf } from './compressor-of.ts'
import { cylindersOf } from './cylinders-of.ts'
import type { RecordWish, Tasks, VisitEvents } from './protocol.ts'
import { systemHistory } from './system-history.ts'
import { tightnessOf } from './tightness-of.ts'
import { weighInOf } from './weigh-in-of.ts'

const DRAWINGS = [chargingChart, subcoolingChart, stepsChart, convergenceChart, plateOfVisit] as const

/** The work behind every task: the packages, called with what was handed over. */
export const TASKS: Tasks = {
  assess: assessed,
  foresee: ({ id, events }, entry) => {
    // What the model predicts in this weather is kept; the answer itself waits until the entry is one.
    assess(fold({ id, events: [...events, { id: 'foreseen', at: new Date().toISOString(), ...entry }] }))
  },
  draw: async (events, units, size, language) => {
    const words = await wordsOf(language)
    const { assessment } = assessed(events)
    const visit = fold(events)
    const sheet = { ...(size === 'desk' ? DESK : PHONE), palette: PAGE }
    return DRAWINGS.flatMap((drawing) => drawing(visit, assessment, units, sheet, words) ?? [])
  },
  record: async (events, wish, system) => {
    const options = await recordOptions(events, wish, system)
    return new Uint8Array(await renderPdf(serviceRecord(fold(events), assessed(events).assessment, options)))
  },
  history: async (visits, units, language) => systemHistory(visits, units, await wordsOf(language)),
  learntFrom: (visits) => taughtBy(visits)?.visits ?? 0,
  practicePlate: plateOf,
  practise: practised,
  recordText: async (events, wish, system, form) => {
    const write = form === 'csv' ? recordCsv : recordJson
    return write(fold(events), assessed(events).assessment, await recordOptions(events, wish, system))
  },
  tightness: async (events, units, size, language) => tightnessOf(events, units, size, await wordsOf(language)),
  airflow: airflowOf,
  compressor: async (events, units, size, language) => compressorOf(events, units, size, await wordsOf(language)),
  leakRate: leakRateOfSystem,
  cylinders: cylindersOf,
  weighIn: weighInOf,
  refrigerants: refrigerantNames,
  refrigerantNamed: readRefrigerantName,
}

/** What a record says beside the visit itself: from how many others the system is known, and what the law asks of it. */
async function recordOptions(
  events: VisitEvents,
  { language, ...wish }: RecordWish,
  system: SystemSoFar | undefined,
): Promise<RecordOptions> {
  return {
    ...wish,
    language: { tag: language, words: await wordsOf(language) },
    learntFrom: assessed(events).learntFrom,
    checks: system ? leakRateChecks(fold(events), system.events, system.use) : [],
  }
}
