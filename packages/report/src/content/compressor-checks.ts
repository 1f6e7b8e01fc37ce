import { compressorOfVisit } from '@chargewright/charging'
import { judgeSupply, RATING_WORDS, type RatedQuantity, SUPPLY_WORDS } from '@chargewright/compressor'
import { evidence, type Statement, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { Check } from './check.ts'
import { notJudged } from './not-judged.ts'
import { sentenceFirst } from './sentence-first.ts'

/** Power and current against the maker's figures; says nothing of a compressor of which neither was read. */
export function compressorChecks(visit: Visit): readonly Check[] {
  const isRead = visit.readings['compressor-power'] ?? visit.readings['compressor-current']
  const found = isRead && compressorOfVisit(visit)
  if (!found) return []
  if (!found.ok) return [notJudged(say`Compressor`, found.error)]
  return found.value.judged.map(({ measured, side, evidence: why, suggests }) => ({
    title: TITLES[measured.what] ?? say`${measured.what}`,
    verdict: say`${RATING_WORDS[side]}`,
    ...sentenceFirst([why, ...suggests.map((each) => evidence(each))]),
  }))
}

const TITLES: Readonly<Partial<Record<RatedQuantity, Statement>>> = {
  power: say`Compressor power`,
  current: say`Compressor current`,
}

/** The supply against the nameplate: of three phases their unbalance before their level. */
export function supplyChecks({ supply }: Visit): readonly Check[] {
  if (!supply) return []
  const found = judgeSupply(supply.voltages, supply.nominal)
  if (!found.ok) return [{ ...notJudged(SUPPLY, found.error), at: supply.at }]
  const { kind, reasons, steps } = found.value
  const [level, ...unbalance] = reasons
  const told = [...unbalance, ...(level ? [level] : []), ...steps.map((step) => evidence(step))]
  return [{ title: SUPPLY, verdict: say`${SUPPLY_WORDS[kind]}`, ...sentenceFirst(told), at: supply.at }]
}

const SUPPLY = say`Supply`
