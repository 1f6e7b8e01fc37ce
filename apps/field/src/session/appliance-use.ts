import type { ApplianceUse } from '@chargewright/ledger'
import type { Application } from '@chargewright/visit'

/** What the law calls the use of a system, where its application tells. */
export function applianceUse(application: Application | undefined): ApplianceUse {
  return application === 'medium-temperature' || application === 'low-temperature'
    ? 'commercial-refrigeration'
    : 'comfort-cooling'
}
