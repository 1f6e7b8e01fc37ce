import { fail, ok, outOfRange, type Problem, type Quantity, type Result } from '@chargewright/quantity'

/** A duct by its inner size. */
export type Duct =
  | { readonly kind: 'rectangular'; readonly width: Quantity<'length'>; readonly height: Quantity<'length'> }
  | { readonly kind: 'round'; readonly diameter: Quantity<'length'> }

/** Where to hold the probe, in m from one wall. */
export type TraversePoints =
  | {
      readonly kind: 'rectangular'
      readonly acrossWidth_m: readonly number[]
      readonly acrossHeight_m: readonly number[]
    }
  | { readonly kind: 'round'; readonly acrossDiameter_m: readonly number[]; readonly diameters: 2 }

/**
 * Log-Tchebycheff fractions of a side, by number of lines: their plain mean is the mean velocity of a duct with the
 * logarithmic profile of its walls.
 *
 * @source ASHRAE Handbook – Fundamentals, measurement chapter, and ISO 3966. REMEMBERED
 */
export const LOG_TCHEBYCHEFF = {
  5: [0.074, 0.288, 0.5, 0.712, 0.926],
  6: [0.061, 0.235, 0.437, 0.563, 0.765, 0.939],
  7: [0.053, 0.203, 0.366, 0.5, 0.634, 0.797, 0.947],
} as const

/** Log-linear fractions of a diameter, by number of points on it; two diameters at right angles. Source as above. */
export const LOG_LINEAR = {
  6: [0.032, 0.135, 0.321, 0.679, 0.865, 0.968],
  10: [0.019, 0.077, 0.153, 0.217, 0.361, 0.639, 0.783, 0.847, 0.923, 0.981],
} as const

const MIN_M = 0.05
const MAX_M = 10

/**
 * The points of a traverse.
 *
 * @param duct sides or diameter 50 mm to 10 m
 * @param lines for a rectangular duct 5, 6 or 7 lines across each side, by default 5 below 30 in, 6 to 36 in, 7 above
 *   (REMEMBERED, as the fractions); for a round one 6 or 10 points on each of two diameters, by default 10
 * @returns distances from one wall; else the size that is out of range
 */
export function traversePoints(
  duct: Duct,
  lines: { readonly across?: keyof typeof LOG_TCHEBYCHEFF; readonly onDiameter?: keyof typeof LOG_LINEAR } = {},
): Result<TraversePoints, Problem> {
  const at = (fractions: readonly number[], size: number) => fractions.map((fraction) => fraction * size)
  switch (duct.kind) {
    case 'rectangular': {
      const [w, h] = [duct.width.si, duct.height.si]
      const problem = outOfRange('duct width', w, MIN_M, MAX_M, 'm') ?? outOfRange('duct height', h, MIN_M, MAX_M, 'm')
      if (problem) return fail(problem)
      return ok({
        kind: 'rectangular',
        acrossWidth_m: at(LOG_TCHEBYCHEFF[lines.across ?? linesFor(w)], w),
        acrossHeight_m: at(LOG_TCHEBYCHEFF[lines.across ?? linesFor(h)], h),
      })
    }
    case 'round': {
      const d = duct.diameter.si
      const problem = outOfRange('duct diameter', d, MIN_M, MAX_M, 'm')
      if (problem) return fail(problem)
      return ok({ kind: 'round', acrossDiameter_m: at(LOG_LINEAR[lines.onDiameter ?? 10], d), diameters: 2 })
    }
  }
}

function linesFor(side_m: number): keyof typeof LOG_TCHEBYCHEFF {
  if (side_m < 30 * 0.0254) return 5
  return side_m <= 36 * 0.0254 ? 6 : 7
}
