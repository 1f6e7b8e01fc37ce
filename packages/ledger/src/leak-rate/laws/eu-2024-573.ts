import type { GwpEdition } from '@chargewright/refrigerant'
import { read, remembered, secondary } from '../provision.ts'

const at = (place: string) => `Regulation (EU) 2024/573, ${place}`

/** From this amount on, a check at least every so many months. */
export interface CheckStep {
  readonly from: number
  readonly months: number
}

const steps = (...rows: readonly (readonly [from: number, months: number])[]): readonly CheckStep[] =>
  rows.map(([from, months]) => ({ from, months }))

/** Leak checks of stationary equipment with fluorinated greenhouse gases. Most of it was recalled, not read. */
export const EU_2024_573 = {
  id: '(EU) 2024/573',
  title: 'EU, fluorinated greenhouse gases, leak checks',
  inForce: { from: '2024-03-11' },
  checked: { on: '2026-11-25', against: 'no text of the regulation; a synopsis, and Regulation (EU) No 517/2014' },
  /** Gases of Annex I, by tonnes of carbon dioxide equivalent. */
  annexOne_t: remembered(steps([5, 12], [50, 6], [500, 3]), at('Article 5')),
  /** Gases of Annex II, section 1 (unsaturated ones), by kilograms. */
  annexTwo_kg: remembered(steps([1, 12], [10, 6], [100, 3]), at('Article 5')),
  /** A leak detection system makes the interval this many times as long. */
  detectionFactor: remembered(2, at('Article 5')),
  /** Hermetically sealed and labelled as such: exempt below. */
  hermeticBelow: remembered({ annexOne_t: 10, annexTwo_kg: 2 }, at('Article 5')),
  detectionFrom_t: read(500, 'Regulation (EU) No 517/2014, Article 5'),
  recheckAfterRepair_months: secondary(1, `${at('Article 5')}, by a synopsis`),
  records_years: remembered(5, at('Article 7')),
  gwpEdition: remembered<GwpEdition>('AR4', at('Annex I')),
} as const

/** Unsaturated gases of Annex II, section 1, as refrigerants are named; recalled. */
export const EU_ANNEX_TWO_SECTION_ONE: ReadonlySet<string> = new Set([
  'R-1224yd(Z)',
  'R-1233zd(E)',
  'R-1234yf',
  'R-1234ze(E)',
  'R-1336mzz(E)',
  'R-1336mzz(Z)',
])
