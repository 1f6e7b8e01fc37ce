import type { Assessment, Target } from '@chargewright/charging'
import {
  inEnglish,
  quantity,
  say,
  sourceInWords,
  type Tell,
  teller,
  type UnitPreference,
  verbatim,
  type Words,
} from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { axisTitle, linearAxis, tickText } from './axis.ts'
import { draw } from './draw.ts'
import { fromTarget, pointLabel } from './from-target.ts'
import { bare, reach, shown } from './in-unit.ts'
import { isReady } from './is-ready.ts'
import { label } from './label.ts'
import { DESK, type Picture, type PictureTable, type Sheet } from './picture.ts'
import { lineIn, type Plot, plot, reachAt } from './plot.ts'
import { pointMark } from './point-mark.ts'
import { element, type Point, pathThrough } from './svg.ts'
import { type Curve, indoorKind, indoorOf, targetFamily } from './target-family.ts'
import { textWidth } from './text-width.ts'
import { STROKE } from './tokens.ts'

/** Outdoor temperatures that are always shown, 60 °F and 110 °F: the weather in which superheat is read. */
const SHOWN_OUTDOORS = [288.71, 316.48].map((si) => quantity('temperature', si))

/**
 * The target superheat over the outdoor temperature, for this indoor temperature (heavy, with its band) and for others
 * beside it; this system's point on it with its uncertainty, and what it is away from the target.
 *
 * Undefined where the method is not by superheat, or where there is no target or no superheat to draw.
 */
export function chargingChart(
  visit: Visit,
  assessment: Assessment,
  preference: UnitPreference,
  sheet: Sheet = DESK,
  words: Words = inEnglish,
): Picture | undefined {
  const tell = teller(preference, words)
  const { method, target } = assessment
  const superheat = assessment.measures.superheat?.quantity
  const outdoor = visit.readings['condenser-entering-air']?.quantity
  const indoor = indoorOf(visit, assessment)
  if (method?.id !== 'superheat' || !target || !superheat || !outdoor || !indoor) return undefined

  const found: Point = { x: shown(outdoor, preference), y: shown(superheat, preference) }
  const spread: Point = { x: reach(outdoor, preference), y: reach(superheat, preference) }
  const tolerance = shown(target.tolerance.quantity, preference)
  const warmth = [found.x - spread.x, found.x + spread.x, ...SHOWN_OUTDOORS.map((q) => shown(q, preference))]
  const across = linearAxis(axisTitle(tell(say`air entering condenser`), 'temperature', preference), warmth, 6)
  const curves = targetFamily(visit, indoor, across, preference)
  const own = curves[Math.floor(curves.length / 2)]!
  const band = own.points.flatMap(({ y }) => [y - tolerance, y + tolerance])
  const up = linearAxis(
    axisTitle(tell(say`superheat`), 'temperature difference', preference),
    [0, found.y - spread.y, found.y + spread.y, shown(target.quantity, preference), ...band],
    5,
  )
  const kind = tell(say`${indoorKind(visit)}`)
  const names = curves.map((curve) => (curve === own ? `${curve.name} ${kind}` : curve.name))
  const ends = ((own.points.at(-1)?.x ?? across.to) - across.from) / (across.to - across.from)
  const at = plot(sheet, across, up, { text: names[curves.indexOf(own)]!, share: ends })
  const mark = at.place(found)
  const goal = at.place({ x: found.x, y: shown(target.quantity, preference) })
  const region = reachAt(at, found, spread)
  const apart = { mark, goal, clear: region.x, left: at.box.left }
  return draw(
    sheet,
    {
      title: tell(say`Superheat against its target`),
      description: tell(
        say`Superheat ${superheat}; target ${target.quantity}, with a band of ${bare(target.tolerance.quantity)} to either side, at ${bare(outdoor)} outdoors and ${bare(indoor)} ${kind} indoors. Target from: ${verbatim(sourceOf(target, words, tell))}.`,
      ),
      table: tableOf(curves, names, across.ticks, across.title, tell),
    },
    at.grid,
    bandOf(at, own.points, tolerance, sheet),
    ...curves.map((curve) => lineOf(at, curve, curve === own, sheet)),
    ...curveNames(at, curves, names, own, sheet),
    isReady(assessment) ? fromTarget(apart, superheat, target.quantity, tell, sheet) : '',
    pointMark(mark, region, sheet),
    pointLabel(apart, tell(say`${superheat}`), sheet),
  )
}

/** The band around this system's own curve, cut level with the plot. */
function bandOf(at: Plot, points: readonly Point[], tolerance: number, { palette }: Sheet): string {
  const edge = (sign: 1 | -1) => points.map(({ x, y }) => at.place({ x, y: y + sign * tolerance }))
  const inside = ({ x, y }: Point): Point => ({ x, y: Math.max(at.box.top, Math.min(y, at.box.bottom)) })
  const outline = [...edge(1), ...edge(-1).toReversed()].map(inside)
  return outline.length < 4 ? '' : element('path', { d: pathThrough(outline, true), fill: palette.wash })
}

const lineOf = (at: Plot, { points }: Curve, own: boolean, { text, palette }: Sheet): string =>
  lineIn(at, points.map(at.place), own ? palette.ink : palette.soft, (own ? STROKE.heavy : STROKE.grid) * text)

/**
 * The name of this system's own curve at its far end, those of the others where they come in: of names that would lie on
 * one another the first stands.
 */
function curveNames(at: Plot, curves: readonly Curve[], names: readonly string[], own: Curve, sheet: Sheet) {
  const { text, palette } = sheet
  const taken: Point[] = []
  return curves.map((curve, i) => {
    const inside = curve.points.map(at.place).filter(({ y }) => y >= at.box.top + 0.4 * text && y <= at.box.bottom)
    const end = curve === own ? inside.at(-1) : inside[0]
    if (!end) return ''
    const y = end.y + 0.35 * text
    if (curve === own) return label(names[i]!, end.x + 0.4 * text, y, sheet, { weight: 'bold', onPaper: true })
    const [x, width] = [end.x + 0.3 * text, textWidth(names[i]!, text) + 0.3 * text]
    if (taken.some((other) => Math.abs(other.x - x) < width && Math.abs(other.y - y) < 1.1 * text)) return ''
    taken.push({ x, y })
    return label(names[i]!, x, y, sheet, { fill: palette.soft, onPaper: true })
  })
}

const sourceOf = ({ evidence: { source, statement } }: Target, words: Words, tell: Tell): string =>
  source === undefined ? tell(statement) : sourceInWords(source, words)

/** The target at every tick of the outdoor axis, a column for each curve. */
function tableOf(
  curves: readonly Curve[],
  names: readonly string[],
  ticks: readonly number[],
  outdoors: string,
  tell: Tell,
): PictureTable {
  const cell = ({ points }: Curve, tick: number) =>
    points.find(({ x }) => x === tick)?.y.toFixed(1) ?? tell(say`no valid test`)
  return {
    head: [outdoors, ...names.map((name) => tell(say`target at ${verbatim(name)}`))],
    rows: ticks.map((tick) => [tickText(tick), ...curves.map((curve) => cell(curve, tick))]),
  }
}
