import type { Provision } from './provision.ts'

export const APPLIANCE_USES = {
  'commercial-refrigeration': 'commercial refrigeration',
  'industrial-process': 'industrial process refrigeration',
  'comfort-cooling': 'comfort cooling',
  'refrigerated-transport': 'refrigerated transport',
  other: 'another appliance',
} as const

export type ApplianceUse = keyof typeof APPLIANCE_USES

/**
 * A law that makes an owner repair leaks, as its figures stood between two dates. A changed figure is a new entry with
 * its own dates; the old one stays, so that an old record gives its old answer.
 */
export interface LeakRepairLaw {
  readonly id: string
  readonly title: string
  /** First and last day of this wording; no last day while it holds. */
  readonly inForce: { readonly from: string; readonly to?: string }
  /** When a person last held the figures against the text, and what text that was. */
  readonly checked: { readonly on: string; readonly against: string }
  readonly substances: Provision<'ozone-depleting' | 'ozone-depleting-or-substitute' | 'hydrofluorocarbons'>
  readonly exemptsResidentialAndLightCommercial: Provision<boolean>
  readonly leastFullCharge_kg: Provision<number>
  /** A rate over the figure, not at it, obliges. */
  readonly thresholds_percent: Readonly<Record<ApplianceUse, Provision<number>>>
  /** Days taken for a first rate by the annualizing method, where no earlier addition is known. */
  readonly firstPeriod_days?: Provision<number>
  /** Day from which a first rate by the rolling method sums additions. */
  readonly additionsFrom?: Provision<string>
  readonly repair_days: Provision<{ readonly normal: number; readonly processShutdown: number }>
  readonly followUp_days: Provision<number>
  readonly inspections: {
    readonly large: Provision<{ readonly from_kg: number; readonly everyMonths: number }>
    readonly others: Provision<'each-calendar-year' | 'each-year-after-the-last'>
    /** Whether the first interval starts at a passed follow-up test rather than at the leak. */
    readonly startAtFollowUp: Provision<boolean>
  }
  readonly retrofit: Provision<{
    readonly plan_days: number
    readonly afterPlan_months: number
    readonly afterTrigger_months?: number
  }>
  /** At or over the figure in one calendar year. */
  readonly chronic_percent: Provision<number>
  readonly records_years: Provision<number>
}
