import type { LeakRepairLaw } from '../leak-repair-law.ts'
import { read } from '../provision.ts'

const LB = 0.45359237
const at = (paragraph: string) => `40 CFR 84.106${paragraph}`

/**
 * Hydrofluorocarbons and blends with them. Substitutes with a global warming potential over 53 in table 1 of 84.64(b)
 * are covered too; of the refrigerants here none is one.
 */
export const US_40_CFR_84_106: LeakRepairLaw = {
  id: '40 CFR 84.106',
  title: 'US, management of hydrofluorocarbons, leak repair (AIM Act, subsection (h))',
  inForce: { from: '2026-01-01' },
  checked: { on: '2026-11-25', against: 'eCFR text of 40 CFR 84.106, a copy without its date' },
  substances: read('hydrofluorocarbons', at('(a)(1), (2), (3)(i)')),
  exemptsResidentialAndLightCommercial: read(true, at('(a)(3)(ii)')),
  leastFullCharge_kg: read(15 * LB, at('(a)')),
  thresholds_percent: {
    'commercial-refrigeration': read(20, at('(c)(2)(i)')),
    'industrial-process': read(30, at('(c)(2)(ii)')),
    'comfort-cooling': read(10, at('(c)(2)(iii)')),
    'refrigerated-transport': read(10, at('(c)(2)(iii)')),
    other: read(10, at('(c)(2)(iii)')),
  },
  firstPeriod_days: read(365, at('(b)(1)')),
  additionsFrom: read('2026-01-01', at('(b)(2)')),
  repair_days: read({ normal: 30, processShutdown: 120 }, at('(d), (e)(1)')),
  followUp_days: read(10, at('(e)(2)')),
  inspections: {
    large: read({ from_kg: 500 * LB, everyMonths: 3 }, at('(g)(1)(i)')),
    others: read('each-year-after-the-last', at('(g)(1)(ii), (iii)')),
    startAtFollowUp: read(true, at('(g)(1)')),
  },
  retrofit: read({ plan_days: 30, afterPlan_months: 12 }, at('(h)(1), (5)(i)')),
  chronic_percent: read(125, at('(j)')),
  records_years: read(3, at('(l)')),
}
