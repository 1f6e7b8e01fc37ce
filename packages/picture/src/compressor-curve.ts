import {
  type Compressor,
  expectedRating,
  type Operating,
  RATING_TOLERANCE,
  type RatedQuantity,
  type Rating,
} from '@chargewright/compressor'
import {
  type Dimension,
  inEnglish,
  type Quantity,
  quantity,
  type Statement,
  say,
  sourceInWords,
  type Tell,
  teller,
  type UnitPreference,
  verbatim,
  type Words,
} from '@chargewright/quantity'
import { axisTitle, linearAxis, tickText } from './axis.ts'
import { draw } from './draw.ts'
import { bare, reach, shown } from './in-unit.ts'
import { label } from './label.ts'
import { DESK, type Picture, type Sheet } from './picture.ts'
import { lineIn, type Plot, plot, reachAt } from './plot.ts'
import { pointMark } from './point-mark.ts'
import { element, type Point, pathThrough } from './svg.ts'
import { STROKE } from './tokens.ts'

const DIMENSIONS: Readonly<Record<RatedQuantity, Dimension>> = {
  'mass flow': 'mass flow',
  power: 'power',
  current: 'current',
  capacity: 'cooling capacity',
}
const AXES: Readonly<Record<RatedQuantity, Statement>> = {
  'mass flow': say`mass flow`,
  power: say`power`,
  current: say`current`,
  capacity: say`capacity`,
}

const TITLES: Readonly<Record<RatedQuantity, Statement>> = {
  'mass flow': say`Compressor mass flow against its maker’s figures`,
  power: say`Compressor power against its maker’s figures`,
  current: say`Compressor current against its maker’s figures`,
  capacity: say`Compressor capacity against its maker’s figures`,
}

/** The other suction dew temperatures that are drawn, away from this one. */
const BESIDE_K = [-6, 6]
/** How far around the condensing temperature as found the curve is drawn, and in how many pieces. */
const AROUND_K = 20
const NODES = 40

interface Curve {
  readonly suctionDew: Quantity<'temperature'>
  readonly points: readonly Point[]
}

/**
 * What a sound compressor would draw, move or take over the condensing temperature: heavy at the suction as found, with
 * the tolerance of its rating as a band, thin for a warmer and a colder suction; and the point that was measured.
 *
 * Undefined where the maker's figures do not reach the pressures as found.
 */
export function compressorCurve(
  compressor: Compressor,
  operating: Operating,
  measured: Rating,
  preference: UnitPreference,
  sheet: Sheet = DESK,
  words: Words = inEnglish,
): Picture | undefined {
  const { what } = measured
  const tell = teller(preference, words)
  const value = (si: number, u?: number) => quantity(DIMENSIONS[what], si, u)
  const expected = expectedRating(compressor, what, operating)
  if (!expected.ok) return undefined
  const curveAt = (suctionDew: Quantity<'temperature'>): Curve => ({
    suctionDew,
    points: Array.from({ length: NODES + 1 }, (_, i) => operating.dischargeDew.si + AROUND_K * ((2 * i) / NODES - 1))
      .map((si) => quantity('temperature', si))
      .flatMap((dischargeDew) => {
        const rated = expectedRating(compressor, what, { ...operating, suctionDew, dischargeDew })
        if (!rated.ok) return []
        return [{ x: shown(dischargeDew, preference), y: shown(value(rated.value.rating.si), preference) }]
      }),
  })
  const own = curveAt(operating.suctionDew)
  const others = BESIDE_K.map((away) => curveAt(quantity('temperature', operating.suctionDew.si + away))).filter(
    ({ points }) => points.length > 1,
  )

  const found = value(measured.si, measured.u)
  const dew = operating.dischargeDew
  const point: Point = { x: shown(dew, preference), y: shown(found, preference) }
  const spread: Point = { x: reach(dew, preference), y: reach(found, preference) }
  const all = [own, ...others].flatMap(({ points }) => points)
  const name = ({ suctionDew }: Curve) => `${tickText(Math.round(shown(suctionDew, preference)))}°`
  const across = linearAxis(
    axisTitle(tell(say`condensing, dew`), 'temperature', preference),
    all.map(({ x }) => x),
    6,
  )
  const up = linearAxis(
    axisTitle(tell(AXES[what]), DIMENSIONS[what], preference),
    [
      ...all.map(({ y }) => y),
      ...own.points.flatMap(({ y }) => [y * (1 - RATING_TOLERANCE), y * (1 + RATING_TOLERANCE)]),
      point.y - spread.y,
      point.y + spread.y,
    ],
    5,
  )
  const suctionName = (curve: Curve) => tell(say`${verbatim(name(curve))} suction`)
  const ownName = suctionName(own)
  const ends = ((own.points.at(-1)?.x ?? across.to) - across.from) / (across.to - across.from)
  const at = plot(sheet, across, up, { text: ownName, share: ends })
  const mark = at.place(point)
  const region = reachAt(at, point, spread)
  const { rating, evidence } = expected.value
  const source = evidence.source === undefined ? tell(say`the maker`) : sourceInWords(evidence.source, words)
  return draw(
    sheet,
    {
      title: tell(TITLES[what]),
      description: tell(
        say`Measured ${found}, expected ${value(rating.si, rating.u)} at ${bare(operating.suctionDew)} suction and ${bare(dew)} condensing dew temperature. The band is ${100 * RATING_TOLERANCE} % to either side. From: ${verbatim(source)}.`,
      ),
      table: {
        head: [across.title, ...[own, ...others].map(suctionName)],
        rows: across.ticks.map((tick) => [
          tickText(tick),
          ...[own, ...others].map((curve) => valueAt(curve, tick, tell)),
        ]),
      },
    },
    at.grid,
    bandOf(at, own.points, sheet),
    ...others.map((curve) => curveIn(at, curve, name(curve), clearOf(at, curve, own, sheet), sheet)),
    ownCurve(at, own, ownName, sheet),
    pointMark(mark, region, sheet),
    pointName(tell(say`${found}`), mark, region.x, measured.si < rating.si, sheet),
  )
}

function bandOf(at: Plot, points: readonly Point[], { palette }: Sheet): string {
  const edge = (factor: number) => points.map(({ x, y }) => at.place({ x, y: y * factor }))
  const outline = [...edge(1 + RATING_TOLERANCE), ...edge(1 - RATING_TOLERANCE).toReversed()]
  return element('path', { d: pathThrough(outline, true), fill: palette.wash })
}

const endOf = (at: Plot, { points }: Curve): Point => at.place(points.at(-1)!)

function ownCurve(at: Plot, curve: Curve, name: string, sheet: Sheet): string {
  const { text, palette } = sheet
  const { x, y } = endOf(at, curve)
  const line = lineIn(at, curve.points.map(at.place), palette.ink, STROKE.heavy * text)
  return line + label(name, x + 0.4 * text, y + 0.35 * text, sheet, { weight: 'bold' })
}

function curveIn(at: Plot, curve: Curve, name: string, y: number, sheet: Sheet): string {
  const { text, palette } = sheet
  const line = lineIn(at, curve.points.map(at.place), palette.soft, STROKE.grid * text)
  return line + label(name, endOf(at, curve).x + 0.4 * text, y + 0.35 * text, sheet, { fill: palette.soft })
}

/** The height of a name at the end of its curve, moved on where it would lie on that of this compressor's own. */
function clearOf(at: Plot, curve: Curve, own: Curve, { text }: Sheet): number {
  const [y, taken] = [endOf(at, curve).y, endOf(at, own).y]
  const room = 1.15 * text
  return y < taken ? Math.min(y, taken - room) : Math.max(y, taken + room)
}

/** Away from the curve: below it to the right, above it to the left. */
function pointName(words: string, { x, y }: Point, clear: number, isBelow: boolean, sheet: Sheet): string {
  const { text } = sheet
  const away = Math.max(clear, 0.4 * text) + 0.5 * text
  return isBelow
    ? label(words, x + away, y + 0.9 * text, sheet, { weight: 'bold', onPaper: true })
    : label(words, x - away, y - 0.3 * text, sheet, { weight: 'bold', anchor: 'end', onPaper: true })
}

/** On the straight line between the two nodes around a tick. */
function valueAt({ points }: Curve, tick: number, tell: Tell): string {
  const i = points.findIndex(({ x }) => x >= tick)
  const [before, after] = [points[i - 1], points[i]]
  if (!before || !after) return tell(say`outside the figures`)
  const share = (tick - before.x) / (after.x - before.x)
  return Number((before.y + share * (after.y - before.y)).toPrecision(4)).toString()
}
