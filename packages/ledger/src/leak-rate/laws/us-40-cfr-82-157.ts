import type { LeakRepairLaw } from '../leak-repair-law.ts'
import { read } from '../provision.ts'

const LB = 0.45359237
const at = (paragraph: string) => `40 CFR 82.157${paragraph}`

/** Wording of 10 April 2020: ozone-depleting substances only. */
export const US_40_CFR_82_157: LeakRepairLaw = {
  id: '40 CFR 82.157',
  title: 'US, appliance maintenance and leak repair (Clean Air Act, section 608)',
  inForce: { from: '2020-04-10' },
  checked: { on: '2026-11-25', against: '81 FR 82356, Nov. 18, 2016, as amended at 85 FR 14171, Apr. 10, 2020' },
  substances: read('ozone-depleting', at('(a)')),
  exemptsResidentialAndLightCommercial: read(false, at('(a)')),
  leastFullCharge_kg: read(50 * LB, at('(a)')),
  thresholds_percent: {
    'commercial-refrigeration': read(20, at('(c)(2)(i)')),
    'industrial-process': read(30, at('(c)(2)(ii)')),
    'comfort-cooling': read(10, at('(c)(2)(iii)')),
    'refrigerated-transport': read(10, at('(c)(2)(iii)')),
    other: read(10, at('(c)(2)(iii)')),
  },
  repair_days: read({ normal: 30, processShutdown: 120 }, at('(d), (e)(1)')),
  followUp_days: read(10, at('(e)(2)')),
  inspections: {
    large: read({ from_kg: 500 * LB, everyMonths: 3 }, at('(g)(1)(i)')),
    others: read('each-calendar-year', at('(g)(1)(ii), (iii)')),
    startAtFollowUp: read(false, at('(g)(1)')),
  },
  retrofit: read({ plan_days: 30, afterPlan_months: 12, afterTrigger_months: 13 }, at('(h)(1), (5)')),
  chronic_percent: read(125, at('(j)')),
  records_years: read(3, at('(l)')),
}

/** Before that, from 1 January 2019, appliances with substitutes were covered as well. */
export const US_40_CFR_82_157_OF_2019: LeakRepairLaw = {
  ...US_40_CFR_82_157,
  inForce: { from: '2019-01-01', to: '2020-04-09' },
  substances: read('ozone-depleting-or-substitute', at('(a)')),
}
