import { type Assessment, FINDINGS } from '@chargewright/charging'
import { inEnglish, say, type Tell, teller, type UnitPreference, verbatim, type Words } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { axisTitle, linearAxis } from './axis.ts'
import { draw } from './draw.ts'
import { bare, shown, written } from './in-unit.ts'
import { label } from './label.ts'
import { DESK, type Picture, type PictureTable, type Sheet } from './picture.ts'
import { lineIn, type Plot, plot } from './plot.ts'
import { massOf, type StepLeft, stepsLeft } from './steps-left.ts'
import { element, type Point } from './svg.ts'
import { STROKE } from './tokens.ts'

/** Of more steps only the last is named; the table has all. */
const MOST_LABELS = 5

/**
 * How the weighed steps close on the charge: what had gone in before each step, and the stretch in which the twin put
 * the target then. The stretches grow shorter as the system answers.
 *
 * Undefined before the first weighed step, and where no twin sized any.
 */
export function convergenceChart(
  visit: Visit,
  assessment: Assessment,
  preference: UnitPreference,
  sheet: Sheet = DESK,
  words: Words = inEnglish,
): Picture | undefined {
  if (visit.moves.length === 0) return undefined
  const steps = stepsLeft(visit, assessment)
  if (!steps.some(({ aim }) => aim)) return undefined
  const tell = teller(preference, words)
  const inUnits = (si: number) => shown(massOf(si), preference)
  const across = linearAxis(tell(say`weighed steps`), [0, steps.length - 1], 4)
  const up = linearAxis(
    axisTitle(tell(say`refrigerant in`), 'mass', preference),
    [0, ...steps.flatMap(({ net, aim }) => [net.si, ...(aim ? [aim.low, aim.high] : [])]).map(inUnits)],
    5,
  )
  const at = plot(sheet, { ...across, ticks: across.ticks.filter(Number.isInteger) }, up)
  const where = (step: number, si: number) => at.place({ x: step, y: inUnits(si) })
  const net = steps.flatMap((step, i) => {
    const here = where(i, step.net.si)
    const before = steps[i - 1]
    return before ? [{ x: here.x, y: where(i, before.net.si).y }, here] : [here]
  })
  const { palette, text } = sheet
  return draw(
    sheet,
    {
      title: tell(say`Closing on the charge`),
      description: describe(steps, preference, tell),
      table: tableOf(steps, preference, tell),
    },
    at.grid,
    ...steps.map(({ aim }, i) => (aim ? stretch(where(i, aim.low), where(i, aim.high), sheet) : '')),
    lineIn(at, net, palette.ink, STROKE.heavy * text),
    ...steps.map((step, i) => dot(where(i, step.net.si), sheet)),
    ...steps.map((step, i) =>
      steps.length <= MOST_LABELS || i === steps.length - 1
        ? stepName(at, where, step, i, preference, tell, sheet)
        : '',
    ),
  )
}

/** Where the target lay, as a shaded stretch with its two ends drawn. */
function stretch(low: Point, high: Point, { text, palette }: Sheet): string {
  const half = 0.5 * text
  const end = (y: number) =>
    element('line', {
      x1: low.x - half,
      x2: low.x + half,
      y1: y,
      y2: y,
      stroke: palette.care,
      'stroke-width': STROKE.line * text,
    })
  const shade = element('rect', {
    x: low.x - half,
    y: high.y,
    width: 2 * half,
    height: low.y - high.y,
    fill: palette.care,
    'fill-opacity': 0.2,
  })
  return shade + end(low.y) + end(high.y)
}

const dot = ({ x, y }: Point, { text, palette }: Sheet): string =>
  element('circle', {
    cx: x,
    cy: y,
    r: 0.38 * text,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': STROKE.heavy * text,
  })

/** Where the target was put, over its stretch; at the last step, where there is none, what was found. */
function stepName(
  at: Plot,
  where: (step: number, si: number) => Point,
  { aim, net, finding }: StepLeft,
  i: number,
  preference: UnitPreference,
  tell: Tell,
  sheet: Sheet,
): string {
  const { text } = sheet
  const top = where(i, aim?.high ?? net.si)
  const words = aim ? aimInWords(aim, preference, tell) : tell(say`${FINDINGS[finding]}`)
  const up = top.y - at.box.top > 1.6 * text ? -0.6 * text : 1.4 * text
  // The first stretch stands on the axis: its label keeps clear of that.
  const [x, anchor] = i === 0 ? ([top.x + 0.8 * text, 'start'] as const) : ([top.x, 'middle'] as const)
  return label(words, x, top.y + up, sheet, { anchor, weight: 'bold', onPaper: true })
}

function aimInWords({ low, high }: NonNullable<StepLeft['aim']>, preference: UnitPreference, tell: Tell): string {
  const [from, to] = [written(massOf(low), preference), written(massOf(high), preference)].map((text) =>
    text.split(' '),
  )
  // One unit needs to be named once; pounds and ounces are whole on both sides.
  const isOneUnit = from?.length === 2 && to?.length === 2 && from[1] === to[1]
  return isOneUnit
    ? tell(say`${verbatim(from[0] ?? '')} to ${massOf(high)}`)
    : tell(say`${massOf(low)} to ${massOf(high)}`)
}

function describe(steps: readonly StepLeft[], preference: UnitPreference, tell: Tell): string {
  const last = steps.at(-1)!
  const sized = steps.flatMap(({ aim }) => (aim ? [aimInWords(aim, preference, tell)] : []))
  const route = verbatim(sized.join(tell(say`, then `)))
  return tell(
    say`Weighed steps: ${steps.length - 1}, ${last.net} net into the system. Before each step the target lay, in nine of ten cases, at: ${route}. Now: ${FINDINGS[last.finding]}.`,
  )
}

function tableOf(steps: readonly StepLeft[], preference: UnitPreference, tell: Tell): PictureTable {
  return {
    head: [say`after step`, say`net refrigerant in`, say`the target then lay at`, say`finding`].map(tell),
    rows: steps.map(({ net, aim, finding }, i) => [
      i === 0 ? tell(say`as found`) : String(i),
      tell(say`${bare(net)}`),
      aim ? aimInWords(aim, preference, tell) : tell(say`not sized`),
      tell(say`${FINDINGS[finding]}`),
    ]),
  }
}
