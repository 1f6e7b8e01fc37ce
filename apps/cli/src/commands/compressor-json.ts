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

/** Expected values by name in SI, and what was measured against them. */
export function compressorJson(answer: CompressorAnswer, units: UnitPreference): object {
  const { suctionDew, dischargeDew, expected, judged, fromSystem } = answer
  return {
    ...inSi('suction_dew', suctionDew),
    ...inSi('discharge_dew', dischargeDew),
    expected: Object.assign({}, ...expected.map(({ rating }) => ratingInSi(rating))),
    ...optional('from_system_curve', fromSystem && KEYS[fromSystem][0]),
    judgements: judged.map(({ what, judgement: { side, off, suggests } }) => ({
      of: KEYS[what][0],
      side,
      off_fraction: off,
      suggests: suggests.map((each) => render(each, units)),
    })),
    reasons: [...judged.map(({ judgement }) => judgement.evidence), ...expected.map(({ evidence }) => evidence)].map(
      (each) => evidenceJson(each, units),
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
