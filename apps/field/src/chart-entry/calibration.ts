/** A point of a picture, in its own pixels. */
export interface Spot {
  readonly x: number
  readonly y: number
}

/** A point of a picture whose value along one axis is known. */
export interface Mark {
  readonly at: Spot
  readonly value: number
}

/** What lies where on the picture of a chart: values along the two axes, in the chart's own units. */
export interface Calibration {
  readonly valueAt: (spot: Spot) => { readonly across: number; readonly up: number }
  readonly spotOf: (across: number, up: number) => Spot
}

/**
 * The axes of a photographed chart, from two points on each with their values. They may stand at any angle to the
 * picture and to each other, so a photo taken askew is straightened; one taken from the side, so that lines that are
 * parallel on paper run together, is not, and shows in the check.
 *
 * @returns undefined where two points have the same place or value, or the axes run in one direction
 */
export function calibration(across: readonly [Mark, Mark], up: readonly [Mark, Mark]): Calibration | undefined {
  const [a, b] = [perUnit(across), perUnit(up)]
  const area = cross(a, b)
  if (!(Math.abs(area) > LEAST_SINE * Math.hypot(a.x, a.y) * Math.hypot(b.x, b.y))) return undefined
  const [x0, y0] = [across[0], up[0]]
  const valueAt = (spot: Spot) => ({
    across: x0.value + cross(minus(spot, x0.at), b) / area,
    up: y0.value + cross(a, minus(spot, y0.at)) / area,
  })
  return {
    valueAt,
    spotOf: (toAcross, toUp) => {
      // From any known spot along both axes; the first mark of the one across serves.
      const here = valueAt(x0.at)
      const [along, rise] = [toAcross - here.across, toUp - here.up]
      return { x: x0.at.x + along * a.x + rise * b.x, y: x0.at.y + along * a.y + rise * b.y }
    },
  }
}

/** Axes that cross at less than six degrees are a slip of the finger. */
const LEAST_SINE = 0.1

/** The way on the picture that one unit of an axis is. */
function perUnit([first, second]: readonly [Mark, Mark]): Spot {
  const units = second.value - first.value
  return { x: (second.at.x - first.at.x) / units, y: (second.at.y - first.at.y) / units }
}

const minus = (a: Spot, b: Spot): Spot => ({ x: a.x - b.x, y: a.y - b.y })
const cross = (a: Spot, b: Spot): number => a.x * b.y - a.y * b.x
