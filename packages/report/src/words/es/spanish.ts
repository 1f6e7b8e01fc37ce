import type { Catalogue } from '@chargewright/quantity'
import { AIRFLOW } from './airflow.ts'
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

/** The Spanish of everything that the packages say, by areas; no text is in two of them. An app adds what it says itself. */
export const SPANISH_AREAS: readonly Catalogue[] = [
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
]
