import { type Assessment, LIMITS } from '@chargewright/charging'
import {
  inEnglish,
  type Quantity,
  say,
  type Tell,
  teller,
  type UnitPreference,
  type Words,
} from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { axisTitle, linearAxis } from './axis.ts'
import { draw } from './draw.ts'
import { fromTarget, pointLabel } from './from-target.ts'
import { bare, reach, shown } from './in-unit.ts'
import { isReady } from './is-ready.ts'
import { label } from './label.ts'
import { DESK, type Picture, type Sheet } from './picture.ts'
import { lineIn, type Plot, plot, reachAt } from './plot.ts'
import { pointMark } from './point-mark.ts'
import { element, type Point } from './svg.ts'
import { STROKE } from './tokens.ts'

type Difference = Quantity<'temperature difference'>

/** Where subcooling and valve superheat should lie, and where they do. */
interface Sought {
  readonly target: Quantity
  readonly tolerance: Quantity
  readonly valve: readonly [low: Quantity, high: Quantity]
  readonly subcooling: Difference
  /** Absent where no superheat was read: the point is then a line across. */
  readonly superheat: Difference | undefined
}

/**
 * Subcooling over the superheat that the valve holds: the field in which both are right, this system's point with its
 * uncertainty, and what it is away from the target.
 *
 * Undefined where the method is not by subcooling, or where there is no target or no subcooling to draw.
 */
export function subcoolingChart(
  visit: Visit,
  assessment: Assessment,
  preference: UnitPreference,
  sheet: Sheet = DESK,
  words: Words = inEnglish,
): Picture | undefined {
  const tell = teller(preference, words)
  const sought = soughtBy(visit, assessment)
  if (!sought) return undefined
  const { target, tolerance, valve, subcooling, superheat } = sought
  const inUnit = (q: Quantity) => shown(q, preference)
  const [low, high] = [inUnit(valve[0]), inUnit(valve[1])]
  const found: Point = { x: superheat ? inUnit(superheat) : (low + high) / 2, y: inUnit(subcooling) }
  const spread: Point = { x: superheat ? reach(superheat, preference) : 0, y: reach(subcooling, preference) }
  const [aim, band] = [inUnit(target), inUnit(tolerance)]

  const title = (name: string) => axisTitle(name, 'temperature difference', preference)
  const around = (value: number, by: number) => [value - by, value + by]
  const across = linearAxis(title(tell(say`valve superheat`)), [0, 1.1 * high, ...around(found.x, spread.x)], 6)
  const up = linearAxis(title(tell(say`subcooling`)), [0, 1.3 * (aim + band), ...around(found.y, spread.y)], 5)
  const aimLabel = tell(say`target ${bare(target)}`)
  const at = plot(sheet, across, up, { text: aimLabel, share: (high - across.from) / (across.to - across.from) })
  const [mark, goal] = [at.place(found), at.place({ x: found.x, y: aim })]
  const region = reachAt(at, found, spread)
  const apart = { mark, goal, clear: region.x, left: at.box.left }
  const foundLabel = tell(say`${subcooling}`)
  const pointName = superheat ? foundLabel : tell(say`${subcooling}, superheat not read`)
  return draw(
    sheet,
    {
      title: tell(say`Subcooling against its target`),
      description: describe(sought, assessment, tell),
      table: {
        head: ['', tell(say`found`), tell(say`right from`), tell(say`right to`)],
        rows: [
          [tell(say`Subcooling`), foundLabel, ...around(aim, band).map((edge) => edge.toFixed(1))],
          [
            tell(say`Valve superheat`),
            tell(superheat ? say`${superheat}` : say`not read`),
            low.toFixed(1),
            high.toFixed(1),
          ],
        ],
      },
    },
    at.grid,
    fieldOf(at, [low, high], around(aim, band), sheet),
    targetLine(at, [low, high], aim, aimLabel, sheet),
    isReady(assessment) ? fromTarget(apart, subcooling, target, tell, sheet) : '',
    superheat
      ? pointMark(mark, region, sheet)
      : lineIn(
          at,
          [
            { x: at.box.left, y: mark.y },
            { x: at.box.right, y: mark.y },
          ],
          sheet.palette.ink,
          STROKE.heavy * sheet.text,
        ),
    pointLabel(apart, pointName, sheet),
  )
}

function soughtBy({ system }: Visit, { method, target, measures }: Assessment): Sought | undefined {
  const subcooling = measures.subcooling?.quantity
  if (method?.id !== 'subcooling' || !target || !subcooling) return undefined
  const { valveSuperheatMin, valveSuperheatMax } = system.figures
  return {
    target: target.quantity,
    tolerance: target.tolerance.quantity,
    valve: [
      valveSuperheatMin?.quantity ?? LIMITS.valveSuperheatMin.quantity,
      valveSuperheatMax?.quantity ?? LIMITS.valveSuperheatMax.quantity,
    ],
    subcooling,
    superheat: (measures.valveSuperheat ?? measures.superheat)?.quantity,
  }
}

/** The field in which both the charge and the valve are right. */
function fieldOf(at: Plot, [left, right]: readonly [number, number], heights: readonly number[], sheet: Sheet): string {
  const low = at.place({ x: left, y: Math.min(...heights) })
  const high = at.place({ x: right, y: Math.max(...heights) })
  return element('rect', {
    x: low.x,
    y: high.y,
    width: high.x - low.x,
    height: Math.min(low.y, at.box.bottom) - high.y,
    fill: sheet.palette.wash,
  })
}

function targetLine(
  at: Plot,
  [left, right]: readonly [number, number],
  aim: number,
  words: string,
  sheet: Sheet,
): string {
  const [from, to] = [at.place({ x: left, y: aim }), at.place({ x: right, y: aim })]
  const line = lineIn(at, [from, to], sheet.palette.ink, STROKE.heavy * sheet.text)
  return (
    line + label(words, to.x + 0.4 * sheet.text, to.y + 0.35 * sheet.text, sheet, { weight: 'bold', onPaper: true })
  )
}

function describe(
  { target, tolerance, valve, subcooling, superheat }: Sought,
  { target: judged }: Assessment,
  tell: Tell,
): string {
  const held = superheat ? say`valve superheat ${superheat}` : say`valve superheat not read`
  const [from, to] = valve
  return tell(
    say`Subcooling ${subcooling}; target ${bare(target)}, with a band of ${bare(tolerance)} to either side (${judged?.evidence.statement ?? ''}); ${held}, right from ${bare(from)} to ${bare(to)}.`,
  )
}
