import { isAnswered, isHarmful, isRight, type Scored } from './scored.ts'

/** What remains wrong when only the surest answers are taken, up to a share of all cases. */
export interface RiskAtCoverage {
  readonly coverage: number
  /** Wrong answers over answers taken: a false alarm, a wrong name, or a trouble overlooked. */
  readonly wrong: number
  readonly harmful: number
}

/**
 * Risk over coverage, the surest answers first. Answers equally sure enter together, so that a judge that states no
 * probability is one point.
 *
 * @source El-Yaniv & Wiener 2010, J. Machine Learning Research 11, 1605-1641
 */
export function riskCoverage(scored: readonly Scored[]): readonly RiskAtCoverage[] {
  const sureness = (s: Scored) => s.verdict.sure ?? 1
  const answers = scored.filter(isAnswered).toSorted((a, b) => sureness(b) - sureness(a))
  const curve: RiskAtCoverage[] = []
  let [wrong, harmful] = [0, 0]
  for (const [i, answer] of answers.entries()) {
    if (!isRight(answer)) wrong++
    if (isHarmful(answer)) harmful++
    const next = answers[i + 1]
    if (next && sureness(next) === sureness(answer)) continue
    curve.push({ coverage: (i + 1) / scored.length, wrong: wrong / (i + 1), harmful: harmful / (i + 1) })
  }
  return curve
}
