import type { Catalogue } from '../t.ts'
import { AIRFLOW } from './airflow.ts'
import { APP } from './app.ts'
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
  APP,
]

/** The Spanish of the trade. Which word stands for what is settled in `glossary.ts`. */
export const SPANISH: Catalogue = Object.assign({}, ...AREAS)
