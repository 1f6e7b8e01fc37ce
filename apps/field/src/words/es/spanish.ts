import type { Catalogue } from '../look-up.ts'
import { AIRFLOW } from './airflow.ts'
import { APP_CHART_ENTRY } from './app-chart-entry.ts'
import { APP_LIVE } from './app-live.ts'
import { APP_PARTS } from './app-parts.ts'
import { APP_PRACTICE } from './app-practice.ts'
import { APP_SCREENS } from './app-screens.ts'
import { APP_SESSION } from './app-session.ts'
import { APP_STEPS } from './app-steps.ts'
import { CAUTIONS } from './cautions.ts'
import { COMPRESSOR } from './compressor.ts'
import { CONDITIONS } from './conditions.ts'
import { DIAGNOSIS } from './diagnosis.ts'
import { FINDINGS } from './findings.ts'
import { LEDGER } from './ledger.ts'
import { PICTURES } from './pictures.ts'
import { PRACTICE } from './practice.ts'
import { PROBLEMS } from './problems.ts'
import { READINGS } from './readings.ts'
import { RECORD } from './record.ts'
import { TIGHTNESS } from './tightness.ts'
import { WEIGH_IN } from './weigh-in.ts'

/** The catalogue by areas; no text is in two of them. */
export const AREAS: readonly Catalogue[] = [
  AIRFLOW,
  APP_CHART_ENTRY,
  APP_LIVE,
  APP_PARTS,
  APP_PRACTICE,
  APP_SCREENS,
  APP_SESSION,
  APP_STEPS,
  CAUTIONS,
  COMPRESSOR,
  CONDITIONS,
  DIAGNOSIS,
  FINDINGS,
  LEDGER,
  PICTURES,
  PRACTICE,
  PROBLEMS,
  READINGS,
  RECORD,
  TIGHTNESS,
  WEIGH_IN,
]

/** The Spanish of the trade. Which word stands for what is settled in `glossary.ts`. */
export const SPANISH: Catalogue = Object.assign({}, ...AREAS)
