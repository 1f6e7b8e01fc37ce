import type { Trouble } from '../../population/case.ts'
import rules from '../data/sign-rules.json' with { type: 'json' }
import type { Judge, Verdict } from '../verdict.ts'
import { deviations, meanSquare, type NormalModels } from './normal-model.ts'

/**
 * The sign rules: seven features against what they are on a sound system in this weather. A system whose deviations are
 * as small as on nineteen of twenty sound ones is sound; else each cause is as probable as the product of the
 * probabilities of its signs, and the most probable is named when it is twice as probable as the next.
 *
 * Differs from the source: normal is not learnt on this very unit, which no technician has, but on other sound units of
 * the same device (the seen half); so a deviation counts against the spread between units and instruments together. A
 * sign may be 0, which is then a deviation within one such spread. It states no amount of refrigerant.
 *
 * @source Rossi & Braun 1997, HVAC&R Research 3(1), 19-37: features, patterns, product of probabilities; the ratio of
 * two is remembered. Patterns: `data/sign-rules.json`
 */
export const signRules = (models: NormalModels): Judge => ({
  name: 'sign rules',
  judge: (seen) => {
    const model = models[seen.plate.device]
    const z = deviations(model, seen)
    if (meanSquare(z) <= model.oddAbove) return { kind: 'hold' }
    const table = seen.plate.device === 'thermostatic' ? rules.valve.rules : rules.fixed.rules
    const [best, next] = (Object.entries(table) as [Named, readonly string[]][])
      .map(([cause, signs]) => ({ cause, likelihood: likelihood(signs, z) }))
      .toSorted((a, b) => b.likelihood - a.likelihood)
    if (!best || !next || best.likelihood < LEAST_RATIO * next.likelihood) return { kind: 'no-verdict' }
    return named(best.cause)
  },
})

type Named = keyof typeof rules.fixed.rules & Trouble

const LEAST_RATIO = 2
/** Half-width of what counts as no deviation, in standard deviations. */
const NEUTRAL = 1

function likelihood(signs: readonly string[], z: readonly (number | undefined)[]): number {
  return signs.reduce((product, sign, i) => (z[i] === undefined ? product : product * probability(sign, z[i])), 1)
}

/** Probability of a sign, or of one of several, for a deviation known to one standard deviation. */
function probability(signs: string, z: number): number {
  const [above, below] = [normalBelow(z - NEUTRAL), normalBelow(-z - NEUTRAL)]
  const of: Readonly<Record<string, number>> = { '+': above, '-': below, '0': 1 - above - below }
  return [...signs].reduce((sum, sign) => sum + (of[sign] ?? 0), 0)
}

function named(cause: Named): Verdict {
  switch (cause) {
    case 'short-of-charge':
      return { kind: 'add' }
    case 'overcharged':
      return { kind: 'recover' }
    default:
      return { kind: 'other', cause }
  }
}

/**
 * Standard normal distribution.
 *
 * @source Abramowitz & Stegun, eq. 26.2.17; absolute error below 7.5e-8
 */
function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z))
  const polynomial = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * polynomial
  return z > 0 ? 1 - tail : tail
}
