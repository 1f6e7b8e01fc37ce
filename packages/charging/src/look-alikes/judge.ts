import { type Evidence, evidence, type Statement, say } from '@chargewright/quantity'
import type { Finding, LookAlike } from '../assessment.ts'
import type { Deviation } from '../deviation.ts'
import { judgeByCauses } from '../diagnosis/judge-by-causes.ts'
import { weighedCauses } from '../diagnosis/weighed-causes.ts'
import { nextDose } from '../dose.ts'
import type { Case, Ruling } from '../ruling.ts'
import { charge } from '../sentence.ts'
import { leaveTheCharge, otherCause } from './other-cause.ts'

/** What is found behind a deviation, and what else was considered. */
export type Judged = Pick<Ruling, 'finding' | 'lookAlikes' | 'memory'>

/**
 * Behind a deviation stands the charge or something that looks like it. What was seen at the place itself comes first;
 * then the causes as the model of this system weighs them; where there is no model, the trade's sign rules.
 */
export function judge(asked: Case, deviation: Deviation, signs: readonly LookAlike[]): Judged {
  const seen = signs.find(({ verdict, seen }) => seen && verdict === 'explains')
  if (seen) return { finding: leaveTheCharge(deviation.evidence, seen), lookAlikes: signs }
  const weighed = weighedCauses(asked, asked.memory)
  return weighed.ok ? judgeByCauses(asked, deviation, weighed.value) : bySigns(asked, deviation, signs, weighed.error)
}

function bySigns(asked: Case, deviation: Deviation, signs: readonly LookAlike[], whyNoModel: Statement): Judged {
  const finding =
    otherCause(deviation.evidence, signs) ?? charge(asked, deviation.evidence, signs, nextDose(asked, deviation))
  return { finding: { ...finding, reasons: [...finding.reasons, noModel(whyNoModel)] }, lookAlikes: signs }
}

const noModel = (why: Statement): Evidence =>
  evidence(say`Judged by sign rules, without a model of this system: ${why}`)

/** A deviation within its band still asks whether something else is wrong: only what the model is sure of is named. */
export function judgeInBand(asked: Case, inBand: Evidence, hold: Finding, signs: readonly LookAlike[] = []): Judged {
  const weighed = weighedCauses(asked, asked.memory)
  if (!weighed.ok) return { finding: otherCause(inBand, signs) ?? hold, lookAlikes: signs }
  const judged = judgeByCauses(asked, { evidence: inBand }, weighed.value)
  if (judged.finding.kind === 'not-the-charge') return judged
  return { ...judged, finding: otherCause(inBand, signs) ?? hold, lookAlikes: [...signs, ...judged.lookAlikes] }
}
