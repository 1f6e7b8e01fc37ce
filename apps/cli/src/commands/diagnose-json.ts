import { CAUSE_WORDS, decisionWords, entryLabel, explanation, wantedReading } from '@chargewright/charging'
import { render, type Statement, type UnitPreference } from '@chargewright/quantity'
import { evidenceJson } from '../evidence-json.ts'
import { optional } from '../quantity-json.ts'
import type { DiagnoseAnswer } from './diagnose.ts'

/** The weighed causes with what each would have made of the readings; `memory` is for the next visit of the system. */
export function diagnoseJson({ visit, weighed }: DiagnoseAnswer, units: UnitPreference): object {
  const text = (statement: Statement) => render(statement, units)
  if (!weighed.ok) return { visit: visit.id, nothing_weighed: text(weighed.error) }
  const { diagnosis, decision } = weighed.value
  const { kind, sentence } = decisionWords(decision)
  const wanted = decision.kind === 'read' ? wantedReading(decision.next.observable, visit) : undefined
  return {
    visit: visit.id,
    twin: diagnosis.twin,
    calibration: diagnosis.calibration,
    kind,
    sentence: text(sentence),
    ...optional('next', wanted && { ...wanted.entry, label: entryLabel(wanted.entry), why: text(wanted.why) }),
    ...(decision.kind === 'add' || decision.kind === 'recover'
      ? { mass_kg: decision.mass_kg, low_kg: decision.low_kg, high_kg: decision.high_kg }
      : {}),
    causes: diagnosis.singles.map(({ cause, probability }) => ({
      cause,
      label: text(CAUSE_WORDS[cause].label),
      probability_fraction: probability,
      would_read: evidenceJson(explanation(diagnosis, cause), units),
    })),
    pairs: diagnosis.pairs.slice(0, 3).map(({ causes, probability }) => ({
      causes,
      probability_fraction: probability * diagnosis.pairShare,
    })),
    charge_error_fraction: diagnosis.charge.mean,
    charge_error_low_fraction: diagnosis.charge.low,
    charge_error_high_fraction: diagnosis.charge.high,
    misfit: {
      distance: diagnosis.misfit.distance,
      degrees_of_freedom: diagnosis.misfit.degrees,
      chance_fraction: diagnosis.misfit.chance,
    },
    memory: diagnosis.memory,
  }
}
