import { type Amounts, amounts } from './amounts.ts'
import { RATE_NAMES, RATES, type RateName } from './rates.ts'
import type { Scored } from './scored.ts'
import { type Share, shareOf } from './share.ts'

/** All figures of one judge on one group of cases. */
export interface Figures {
  readonly cases: number
  readonly rates: Readonly<Record<RateName, Share>>
  readonly amounts: Amounts
}

export function figures(scored: readonly Scored[]): Figures {
  const rates = Object.fromEntries(RATE_NAMES.map((name) => [name, shareOf(scored, RATES[name])]))
  return { cases: scored.length, rates: rates as Figures['rates'], amounts: amounts(scored) }
}
