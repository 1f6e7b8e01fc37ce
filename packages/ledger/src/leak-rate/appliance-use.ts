import type { Application } from '@chargewright/visit'
import type { ApplianceUse } from './leak-repair-law.ts'

/** What the law calls the use of a system, where its application tells. */
export function applianceUse(application: Application | undefined): ApplianceUse {
  return application === 'medium-temperature' || application === 'low-temperature'
    ? 'commercial-refrigeration'
    : 'comfort-cooling'
}
