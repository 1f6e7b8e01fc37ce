import type { Catalogue } from '@chargewright/quantity'
import { SPANISH_AREAS } from '@chargewright/report'
import { APP_CHART_ENTRY } from './app-chart-entry.ts'
import { APP_LIVE } from './app-live.ts'
import { APP_PARTS } from './app-parts.ts'
import { APP_PRACTICE } from './app-practice.ts'
import { APP_SCREENS } from './app-screens.ts'
import { APP_SESSION } from './app-session.ts'
import { APP_STEPS } from './app-steps.ts'

/** The catalogue by areas, those of the packages first; no text is in two of them. */
export const AREAS: readonly Catalogue[] = [
  ...SPANISH_AREAS,
  APP_CHART_ENTRY,
  APP_LIVE,
  APP_PARTS,
  APP_PRACTICE,
  APP_SCREENS,
  APP_SESSION,
  APP_STEPS,
]

/** The Spanish of the trade. Which word stands for what is settled in `glossary.ts`. */
export const SPANISH: Catalogue = Object.assign({}, ...AREAS)
