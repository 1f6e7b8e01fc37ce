import { bookUnits } from '@chargewright/ledger'
import { render, type UnitPreference } from '@chargewright/quantity'
import { problemJson } from '../problem-json.ts'
import { inSi, optional } from '../quantity-json.ts'
import type { LawAnswer, LeakRateAnswer } from './leak-rate.ts'

/** Leak rates, clocks, leak checks and CO₂ equivalent as JSON; `confirmed` is false for what was not read in the law. */
export function leakRateJson(answer: LeakRateAnswer, preference: UnitPreference): object {
  const units = bookUnits(preference)
  const { refrigerant, on, laws, co2, euCheck } = answer
  return {
    refrigerant,
    on,
    laws: laws.map((law) => lawJson(law, units)),
    eu_leak_check: {
      ...optional('every_months', euCheck.everyMonths),
      detection_required: euCheck.detectionRequired,
      ...inSi('unsaturated', euCheck.unsaturated),
      text: render(euCheck.because, units),
      source: euCheck.source,
      confirmed: euCheck.confirmed,
    },
    co2_equivalent: co2.ok
      ? {
          equivalent_kg: co2.value.tonnes * 1000,
          equivalent_standard_uncertainty_kg: co2.value.u_tonnes * 1000,
          gwp: co2.value.gwp,
          edition: co2.value.edition,
          source: co2.value.source,
          confirmed: co2.value.confirmed,
        }
      : { problem: problemJson(co2.error) },
  }
}

function lawJson({ coverage, rates, clocks, chronic }: LawAnswer, units: UnitPreference): object {
  return {
    law: coverage.law.id,
    title: coverage.law.title,
    verdict: coverage.verdict,
    because: render(coverage.because, units),
    source: coverage.source,
    confirmed: coverage.confirmed,
    rates: rates.map(({ method, judged }) => {
      if (!judged.ok) return { method, problem: problemJson(judged.error) }
      const { rate, verdict } = judged.value
      return {
        method,
        rate_fraction: rate.percent / 100,
        rate_standard_uncertainty_fraction: rate.u_percent / 100,
        ...inSi('added', rate.added),
        period_days: rate.period_days,
        threshold_fraction: verdict.threshold_percent / 100,
        over: verdict.over,
        text: render(verdict.sentence, units),
        source: verdict.source,
        confirmed: verdict.confirmed,
      }
    }),
    clocks: clocks.map(({ what, due, source, confirmed }) => ({
      what: render(what, units),
      ...(due.kind === 'by' ? { due: due.day } : { waits_for: render(due.for, units) }),
      source,
      confirmed,
    })),
    chronic: {
      chronic: chronic.chronic,
      year_fraction: chronic.percent / 100,
      report_by: chronic.reportBy,
      source: chronic.source,
      confirmed: chronic.confirmed,
    },
  }
}
