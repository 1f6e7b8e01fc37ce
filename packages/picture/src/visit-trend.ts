import { format, type Quantity, type UnitPreference } from '@chargewright/quantity'
import { axisTitle, linearAxis } from './axis.ts'
import { draw } from './draw.ts'
import { bare, reach, shown, written } from './in-unit.ts'
import { label } from './label.ts'
import { DESK, type Picture, type Sheet } from './picture.ts'
import { lineIn, plot, reachAt } from './plot.ts'
import { pointMark } from './point-mark.ts'
import { STROKE } from './tokens.ts'

/** A value of one visit to a system, and what the visit is called. */
export interface TrendPoint {
  /** Number of the visit, from 1, as the list of visits shows it. */
  readonly visit: number
  readonly called: string
  readonly value: Quantity
}

/** A trend is read for its direction: a strip is high enough. */
const STRIP = 0.55

/**
 * One measure over the visits to a system, in their order and not to the scale of time: a year without a visit says
 * nothing. With the region of each value, and the last one written out.
 *
 * Undefined below two values, which make no trend.
 */
export function visitTrend(
  name: string,
  points: readonly TrendPoint[],
  preference: UnitPreference,
  full: Sheet = DESK,
): Picture | undefined {
  const [first, last] = [points[0], points.at(-1)]
  if (!first || !last || points.length < 2) return undefined
  const sheet = { ...full, height: STRIP * full.height }
  const drawn = points.map(({ visit, value }) => ({
    at: { x: visit, y: shown(value, preference) },
    spread: { x: 0, y: reach(value, preference) },
  }))
  const across = linearAxis('visits', [first.visit, last.visit], 6)
  const up = linearAxis(
    axisTitle(name, last.value.dimension, preference),
    [0, ...drawn.flatMap(({ at, spread }) => [at.y - spread.y, at.y + spread.y])],
    4,
  )
  const ending = format(bare(last.value), preference)
  const whole = { ...across, ticks: across.ticks.filter(Number.isInteger) }
  const share = (last.visit - across.from) / (across.to - across.from)
  const at = plot(sheet, whole, up, { text: ending, share })
  const places = drawn.map((point) => at.place(point.at))
  const end = places.at(-1)!
  return draw(
    sheet,
    {
      title: `${name.charAt(0).toUpperCase()}${name.slice(1)} from visit to visit`,
      description: `${points.length} visits, from ${written(first.value, preference)} at the first to ${written(last.value, preference)} at the last.`,
      table: {
        head: ['visit', 'when', name],
        rows: points.map(({ visit, called, value }) => [String(visit), called, written(value, preference)]),
      },
    },
    at.grid,
    lineIn(at, places, sheet.palette.ink, STROKE.line * sheet.text),
    ...drawn.map((point, i) => pointMark(places[i]!, reachAt(at, point.at, point.spread), sheet)),
    label(ending, end.x + 0.8 * sheet.text, end.y + 0.35 * sheet.text, sheet, { weight: 'bold', onPaper: true }),
  )
}
