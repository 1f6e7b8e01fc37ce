import { APPLIANCE_USES, type ApplianceUse } from '@chargewright/ledger'
import type { Problem, Result } from '@chargewright/quantity'
import { choice, fields, list, type Reader, text, truth, typed } from '../json-reader.ts'
import { PLAIN } from '../typed-reading.ts'

const uses = Object.keys(APPLIANCE_USES) as ApplianceUse[]

const addition = fields(
  { on: text, mass: typed('mass', PLAIN.scale) },
  { exempt: choice('retrofit', 'installation', 'seasonal-variance'), leak: text },
)

/** What happened since an addition went over the leak rate: days, as far as they have come. */
const since = fields(
  {},
  {
    exceededOn: text,
    processShutdown: truth,
    initialTestPassedOn: text,
    runsNormallyOn: text,
    followUpPassedOn: text,
    lastInspectionOn: text,
    retrofitPlanOn: text,
    mothballed: fields({ from: text }, { to: text }),
  },
)

const file = fields(
  {
    format: choice('chargewright-leak-history'),
    version: choice(1),
    refrigerant: text,
    use: choice(...uses),
    fullCharge: typed('mass'),
    additions: list(addition, 10_000),
  },
  {
    about: text,
    /** The addition in question; the last one without it. */
    on: text,
    residentialOrLightCommercial: truth,
    followUpPassedOn: text,
    since,
    hermeticAndLabelled: truth,
    leakDetection: truth,
  },
)

export type LeakHistoryFile = typeof file extends Reader<infer Value> ? Value : never

/** Reads the leak history of one appliance; additions without a ± were weighed on a charging scale. */
export const readLeakHistory = (data: unknown): Result<LeakHistoryFile, readonly Problem[]> =>
  file(data, 'leak history')
