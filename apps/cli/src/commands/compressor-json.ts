import type { RatedQuantity, Rating, SupplyFinding } from '@chargewright/compressor'
import { render, type UnitPreference } from '@chargewright/quantity'
import { evidenceJson } from '../evidence-json.ts'
import { inSi, optional } from '../quantity-json.ts'
import type { CompressorAnswer } from './compressor.ts'

/** Name and SI unit of each rated quantity. */
const KEYS: Readonly<Record<RatedQuantity, readonly [name: string, unit: string]>> = {
  'mass flow': ['mass_flow', 'kg_s'],
  power: ['power', 'W'],
  current: ['current', 'A'],
  capacity: ['capacity', 'W'],
}

/** Expected values by name in SI, and the measured current against the expected one. */
export function compressorJson(answer: CompressorAnswer, units: UnitPreference): object {
  const { suctionDew, dischargeDew, expected, judgement } = answer
  return {
    ...inSi('suction_dew', suctionDew),
    ...inSi('discharge_dew', dischargeDew),
    expected: Object.assign({}, ...expected.map(({ rating }) => ratingInSi(rating))),
    ...optional(
      'judgement',
      judgement && {
        side: judgement.side,
        off_fraction: judgement.off,
        suggests: judgement.suggests.map((each) => render(each, units)),
      },
    ),
    reasons: [...(judgement ? [judgement.evidence] : []), ...expected.map(({ evidence }) => evidence)].map((each) =>
      evidenceJson(each, units),
    ),
  }
}

function ratingInSi({ what, si, u }: Rating): object {
  const [name, unit] = KEYS[what]
  return { [`${name}_${unit}`]: si, [`${name}_standard_uncertainty_${unit}`]: u }
}

export function supplyJson(
  { kind, unbalance, derating, reasons, steps }: SupplyFinding,
  units: UnitPreference,
): object {
  return {
    kind,
    ...(unbalance ? { unbalance_fraction: unbalance.value, unbalance_standard_uncertainty_fraction: unbalance.u } : {}),
    ...optional('derating_fraction', derating),
    reasons: reasons.map((each) => evidenceJson(each, units)),
    steps: steps.map((step) => render(step, units)),
  }
}
