import { evidence, fail, ok, outOfRange, type Problem, type Quantity, type Result, say } from '@chargewright/quantity'
import type { Expected } from './expected-rating.ts'
import type { RatedQuantity } from './rated-quantity.ts'
import { ratingInWords } from './rating-in-words.ts'

/**
 * What the maker of the whole system says it does: a grid of one quantity over the air entering the condenser and the
 * air in the box or room. It goes before the compressor's own curve, because it knows the coils.
 */
export interface SystemCurve {
  readonly what: RatedQuantity
  /** Rising, two or more. */
  readonly outdoor_K: readonly number[]
  /** Rising, two or more. */
  readonly box_K: readonly number[]
  /** SI, one row for each outdoor temperature, one value in it for each box temperature. */
  readonly values: readonly (readonly number[])[]
}

/**
 * The value of a system curve, on the plane between the four entries around it.
 *
 * @param outdoor within the grid, and `box` likewise; its uncertainty follows the slopes of the grid
 * @returns the expected value; else the temperature that is outside, or `unreadable` for a grid that is none
 */
export function expectedFromSystem(
  curve: SystemCurve,
  outdoor: Quantity<'temperature'>,
  box: Quantity<'temperature'>,
): Result<Expected, Problem> {
  const problem =
    badGrid(curve) ??
    outside('outdoor temperature', outdoor, curve.outdoor_K) ??
    outside('box temperature', box, curve.box_K)
  if (problem) return fail(problem)
  const row = place(curve.outdoor_K, outdoor.si)
  const column = place(curve.box_K, box.si)
  const at = (i: number, j: number) => curve.values[row.index + i]![column.index + j]!
  const alongBox = (i: number) => at(i, 0) + column.share * (at(i, 1) - at(i, 0))
  const alongOutdoor = (j: number) => at(0, j) + row.share * (at(1, j) - at(0, j))
  const si = alongBox(0) + row.share * (alongBox(1) - alongBox(0))
  const u = Math.hypot(
    ((alongBox(1) - alongBox(0)) / row.width) * (outdoor.u ?? 0),
    ((alongOutdoor(1) - alongOutdoor(0)) / column.width) * (box.u ?? 0),
  )
  const unknown = outOfRange(`uncertainty of the ${curve.what}`, u / si, 0, 1, 'of its value')
  if (unknown) return fail(unknown)
  const rating = { what: curve.what, si, u }
  const words = evidence(
    say`Expected ${curve.what} ${ratingInWords(rating)} of the whole system at ${outdoor} outdoors and ${box} in the box`,
    "maker's performance curve of the system, between its entries",
  )
  return ok({ rating, evidence: words })
}

function badGrid({ outdoor_K, box_K, values }: SystemCurve): Problem | undefined {
  const rising = (axis: readonly number[]) => axis.length >= 2 && axis.every((v, i) => i === 0 || v > axis[i - 1]!)
  const whole = values.length === outdoor_K.length && values.every((row) => row.length === box_K.length)
  if (rising(outdoor_K) && rising(box_K) && whole && values.flat().every((v) => v > 0 && Number.isFinite(v)))
    return undefined
  const accepted = 'rising temperatures on both sides, two or more, and a positive value for each pair'
  return { kind: 'unreadable', field: 'performance curve of the system', value: `${values.length} rows`, accepted }
}

function outside(field: string, { si }: Quantity, axis: readonly number[]): Problem | undefined {
  return outOfRange(field, si, axis[0]!, axis.at(-1)!, 'K')
}

/** The entry before a value that lies on an axis, and how far it is to the next. */
function place(axis: readonly number[], value: number) {
  const index = Math.min(
    axis.findLastIndex((v) => v <= value),
    axis.length - 2,
  )
  const width = axis[index + 1]! - axis[index]!
  return { index, width, share: (value - axis[index]!) / width }
}
