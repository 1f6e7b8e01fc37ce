import type { Assessment } from '@chargewright/charging'
import {
  inEnglish,
  quantity,
  say,
  type Tell,
  teller,
  type UnitPreference,
  verbatim,
  type Words,
} from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { type ChargeStep, chargeSteps, watchedBy } from './charge-steps.ts'
import { draw } from './draw.ts'
import { label } from './label.ts'
import { DESK, type Picture, type PictureTable, type Sheet } from './picture.ts'
import { lineIn, type Plot, plot, reachAt } from './plot.ts'
import { pointMark } from './point-mark.ts'
import { type Aim, type StepPoint, type StepsPlotted, stepsPlotted } from './steps-plotted.ts'
import { element } from './svg.ts'
import { STROKE } from './tokens.ts'

/** Of more steps only the first and the last are named; the table has all. */
const MOST_LABELS = 6

/**
 * The weighed steps of a visit: what the method watches over what went in, as it closes on its target. Where the scale
 * alone decides, what went in over the steps, as it closes on the charge to weigh in.
 *
 * Undefined where nothing was weighed yet.
 */
export function stepsChart(
  visit: Visit,
  assessment: Assessment,
  preference: UnitPreference,
  sheet: Sheet = DESK,
  words: Words = inEnglish,
): Picture | undefined {
  if (visit.moves.length === 0) return undefined
  const tell = teller(preference, words)
  const steps = chargeSteps(visit, assessment)
  const watched = steps.some(({ measure }) => measure) ? watchedBy(assessment) : undefined
  const drawn = stepsPlotted(steps, watched, assessment, preference, tell)
  const { points, aim, across, up } = drawn
  const at = plot(sheet, across, up, { text: aim?.name ?? '', share: 1 })
  const { text, palette } = sheet
  return draw(
    sheet,
    {
      title: tell(say`Weighed steps`),
      description: describe(steps, drawn, tell),
      table: tableOf(steps, watched, tell),
    },
    aim ? bandOf(at, aim, sheet) : '',
    at.grid,
    aim ? aimLine(at, aim, sheet) : '',
    lineIn(
      at,
      points.map(({ at: where }) => at.place(where)),
      palette.ink,
      STROKE.line * text,
    ),
    ...points.map((point) => pointMark(at.place(point.at), reachAt(at, point.at, point.spread), sheet)),
    ...points.map((point, i) =>
      points.length <= MOST_LABELS || i === 0 || i === points.length - 1
        ? stepLabel(at, point, points[i - 1], sheet)
        : '',
    ),
  )
}

function bandOf(at: Plot, { value, tolerance }: Aim, { palette }: Sheet): string {
  const { left, right, top, bottom } = at.box
  const edge = (y: number) => Math.max(top, Math.min(at.place({ x: 0, y }).y, bottom))
  const [high, low] = [edge(value + tolerance), edge(value - tolerance)]
  return element('rect', { x: left, y: high, width: right - left, height: low - high, fill: palette.wash })
}

function aimLine(at: Plot, { value, name }: Aim, sheet: Sheet): string {
  const { y } = at.place({ x: 0, y: value })
  const { left, right } = at.box
  const line = lineIn(
    at,
    [
      { x: left, y },
      { x: right, y },
    ],
    sheet.palette.ink,
    STROKE.heavy * sheet.text,
  )
  return line + label(name, right + 0.8 * sheet.text, y + 0.35 * sheet.text, sheet, { weight: 'bold' })
}

/** Above a point that the line falls to, below one that it rises to: where the line is not. */
function stepLabel(
  at: Plot,
  { at: where, spread, name }: StepPoint,
  before: StepPoint | undefined,
  sheet: Sheet,
): string {
  const { x, y } = at.place(where)
  const clear = Math.max(reachAt(at, where, spread).y, 0.38 * sheet.text)
  const rises = before !== undefined && before.at.y < where.y
  const down = rises ? clear + 1.1 * sheet.text : -clear - 0.4 * sheet.text
  const anchor = before && !rises ? 'middle' : 'start'
  // The first point stands on the axis: its label keeps clear of that.
  return label(name, anchor === 'start' ? x + 0.8 * sheet.text : x, y + down, sheet, { anchor, onPaper: true })
}

function describe(steps: readonly ChargeStep[], { points, aim }: StepsPlotted, tell: Tell): string {
  const total = steps.at(-1)?.net ?? quantity('mass', 0)
  const route = verbatim(points.map(({ name }) => name).join(tell(say`, then `)))
  return [
    say`Steps weighed: ${steps.length - 1}; ${total} net into the system.`,
    ...(points.length > 0 ? [say`In order: ${route}.`] : []),
    ...(aim ? [say`Aimed at: ${verbatim(aim.name)}.`] : []),
  ]
    .map(tell)
    .join(' ')
}

function tableOf(
  steps: readonly ChargeStep[],
  watched: 'superheat' | 'subcooling' | undefined,
  tell: Tell,
): PictureTable {
  return {
    head: [say`step`, say`net refrigerant in`, ...(watched ? [say`${watched}`] : [])].map(tell),
    rows: steps.map(({ net, measure }, i) => [
      i === 0 ? tell(say`as found`) : String(i),
      tell(say`${net}`),
      ...(watched ? [tell(measure ? say`${measure}` : say`not read`)] : []),
    ]),
  }
}
