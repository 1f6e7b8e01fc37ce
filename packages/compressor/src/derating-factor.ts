/**
 * Share of full load that a motor may carry with unbalanced voltage, on straight lines between the points of the curve.
 *
 * @param unbalance fraction, 0 to 0.05
 * @returns undefined above, where it must not run
 * @source NEMA MG-1, derating curve. REMEMBERED; 0.90 at 3 % READ in a power-quality page
 */
export function deratingFactor(unbalance: number): number | undefined {
  const i = DERATING.findIndex(([at]) => at >= unbalance)
  const [after, before] = [DERATING[i], DERATING[i - 1]]
  if (!after || !before) return after?.[1]
  return before[1] + ((unbalance - before[0]) / (after[0] - before[0])) * (after[1] - before[1])
}

const DERATING = [
  [0, 1],
  [0.01, 1],
  [0.02, 0.95],
  [0.03, 0.89],
  [0.04, 0.82],
  [0.05, 0.75],
] as const
