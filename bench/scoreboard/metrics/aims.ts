import type { RateName } from './rates.ts'

/** What a judge must reach on single faults of the unseen half, and what it should; shares. */
export const AIMS: Readonly<Record<RateName, { readonly atMost: number; readonly better: number }>> = {
  falseAlarm: { atMost: 0.05, better: 0.02 },
  harmfulAct: { atMost: 0.015, better: 0.005 },
  touchedForAnother: { atMost: 0.03, better: 0.01 },
  misdiagnosis: { atMost: 0.04, better: 0.015 },
  missedCharge: { atMost: 0.1, better: 0.05 },
  missedOrUnanswered: { atMost: 0.2, better: 0.12 },
  calledSound: { atMost: 0.2, better: 0.1 },
  noAnswer: { atMost: 0.18, better: 0.1 },
}

export const AMOUNT_AIMS = {
  errorMedian: { atMost: 0.05, better: 0.035 },
  errorP90: { atMost: 0.13, better: 0.09 },
  coverage: { from: 0.85, to: 0.95 },
} as const
