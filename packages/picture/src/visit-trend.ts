import {
  inEnglish,
  type Quantity,
  type Statement,
  say,
  teller,
  type UnitPreference,
  type Words,
} from '@chargewright/quantity'
import { axisTitle, linearAxis } from './axis.ts'
import { draw } from './draw.ts'
import { bare, reach, shown } from './in-unit.ts'
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
 *
 * @param name as it stands in the middle of a sentence
 */
export function visitTrend(
  name: Statement,
  points: readonly TrendPoint[],
  preference: UnitPreference,
  full: Sheet = DESK,
  words: Words = inEnglish,
): Picture | undefined {
  const [first, last] = [points[0], points.at(-1)]
  if (!first || !last || points.length < 2) return undefined
  const tell = teller(preference, words)
  const sheet = { ...full, height: STRIP * full.height }
  const drawn = points.map(({ visit, value }) => ({
    at: { x: visit, y: shown(value, preference) },
    spread: { x: 0, y: reach(value, preference) },
  }))
  const across = linearAxis(tell(say`visits`), [first.visit, last.visit], 6)
  const up = linearAxis(
    axisTitle(tell(name), last.value.dimension, preference),
    [0, ...drawn.flatMap(({ at, spread }) => [at.y - spread.y, at.y + spread.y])],
    4,
  )
  const ending = tell(say`${bare(last.value)}`)
  const whole = { ...across, ticks: across.ticks.filter(Number.isInteger) }
  const share = (last.visit - across.from) / (across.to - across.from)
  const at = plot(sheet, whole, up, { text: ending, share })
  const places = drawn.map((point) => at.place(point.at))
  const end = places.at(-1)!
  return draw(
    sheet,
    {
      title: capital(tell(say`${name} from visit to visit`)),
      description: tell(say`${points.length} visits, from ${first.value} at the first to ${last.value} at the last.`),
      table: {
        head: [say`visit`, say`when`, name].map(tell),
        rows: points.map(({ visit, called, value }) => [String(visit), called, tell(say`${value}`)]),
      },
    },
    at.grid,
    lineIn(at, places, sheet.palette.ink, STROKE.line * sheet.text),
    ...drawn.map((point, i) => pointMark(places[i]!, reachAt(at, point.at, point.spread), sheet)),
    label(ending, end.x + 0.8 * sheet.text, end.y + 0.35 * sheet.text, sheet, { weight: 'bold', onPaper: true }),
  )
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
