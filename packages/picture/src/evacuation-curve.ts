import {
  inEnglish,
  type Quantity,
  quantity,
  say,
  type Tell,
  teller,
  type UnitPreference,
  type Words,
} from '@chargewright/quantity'
import {
  type EvacuationFinding,
  HOLD_CRITERIA,
  type HoldCriterion,
  type PressureLog,
  pressureAt,
  type RiseFit,
  vacuumUnits,
} from '@chargewright/tightness'
import { type Axis, axisTitle, linearAxis } from './axis.ts'
import { draw } from './draw.ts'
import { shown } from './in-unit.ts'
import { label } from './label.ts'
import { DESK, type Picture, type PictureTable, type Sheet } from './picture.ts'
import { lineIn, type Plot, plot } from './plot.ts'
import { element, type Point } from './svg.ts'
import { STROKE } from './tokens.ts'

/** More readings than this are drawn without their rings, which would run together. */
const MOST_RINGS = 60
const CURVE_NODES = 60
/** Room above the limit for its name. */
const HEADROOM = 1.15

/**
 * A rise test under vacuum: the readings, the curve that was fitted to them, the leak alone, and the limit that they are
 * held against for as long as the criterion asks. The verdict is the finding's own.
 *
 * @param criterion the one that the finding was judged by
 */
export function evacuationCurve(
  log: PressureLog,
  finding: EvacuationFinding,
  preference: UnitPreference,
  sheet: Sheet = DESK,
  criterion: HoldCriterion = HOLD_CRITERIA.specification,
  words: Words = inEnglish,
): Picture {
  const units = vacuumUnits(preference)
  const tell = teller(units, words)
  const place = ({ elapsed_s, pressure_Pa }: PressureLog[number]): Point => ({
    x: minutes(elapsed_s),
    y: shown(pascals(pressure_Pa), units),
  })
  const { limit, hold } = criterion
  const last = log.at(-1)!.elapsed_s
  const across: Axis = linearAxis(tell(say`minutes after the valve was shut`), [0, minutes(Math.max(last, hold.si))], 6)
  const up = linearAxis(
    axisTitle(tell(say`pressure`), 'absolute pressure', units),
    [0, HEADROOM * shown(limit, units), ...log.map((entry) => place(entry).y)],
    5,
  )
  const isAbove = (log.findLast(({ elapsed_s }) => elapsed_s <= hold.si) ?? log[0]!).pressure_Pa > limit.si
  const limitName = tell(say`limit ${limit}`)
  const at = plot(sheet, across, up)
  const { text, palette } = sheet
  const readings = log.map((entry) => at.place(place(entry)))
  const curve = finding.fit && fitted(finding.fit, log, Math.max(last, hold.si)).map((entry) => at.place(place(entry)))
  return draw(
    sheet,
    {
      title: tell(say`Vacuum after the valve was shut`),
      description: [finding.sentence, ...finding.reasons.map(({ statement }) => statement)]
        .map((statement) => `${tell(statement)}.`)
        .join(' '),
      table: tableOf(log, finding, tell),
    },
    at.grid,
    limitLine(at, { x: minutes(hold.si), y: shown(limit, units) }, limitName, isAbove, sheet),
    curve ? lineIn(at, curve, palette.ink, STROKE.heavy * text) : lineIn(at, readings, palette.ink, STROKE.line * text),
    finding.fit ? leakLine(at, finding.fit, log, place, tell, sheet) : '',
    ...(log.length > MOST_RINGS ? [] : readings.map(({ x, y }) => ring(x, y, sheet))),
    curve && finding.fit ? curveName(at, curve, finding.fit, tell, sheet) : '',
  )
}

const pascals = (si: number): Quantity => quantity('absolute pressure', si)
const minutes = (seconds: number): number => seconds / 60

function fitted({ best }: RiseFit, log: PressureLog, until_s: number): PressureLog {
  const from = log[0]!.elapsed_s
  return Array.from({ length: CURVE_NODES + 1 }, (_, i) => {
    const elapsed_s = from + (i / CURVE_NODES) * (until_s - from)
    return { elapsed_s, pressure_Pa: pressureAt(best, elapsed_s) }
  })
}

/** The limit as long as the criterion asks for it, its name at its end on the side where the readings are not. */
function limitLine(at: Plot, corner: Point, name: string, isAbove: boolean, sheet: Sheet): string {
  const { text, palette } = sheet
  const { x, y } = at.place(corner)
  const until = Math.min(x, at.box.right)
  const path = [
    { x: at.box.left, y },
    { x: until, y },
    { x: until, y: at.box.bottom },
  ]
  return (
    lineIn(at, path, palette.care, STROKE.line * text, `${0.4 * text} ${0.3 * text}`) +
    label(name, until - 0.5 * text, y + (isAbove ? 1.15 : -0.4) * text, sheet, {
      fill: palette.care,
      anchor: 'end',
      onPaper: true,
    })
  )
}

/** What the leak alone would make of it, beside moisture; alone it is the curve itself. */
function leakLine(
  at: Plot,
  { best, leak }: RiseFit,
  log: PressureLog,
  place: (entry: PressureLog[number]) => Point,
  tell: Tell,
  sheet: Sheet,
): string {
  if (best.kind !== 'leak-and-moisture') return ''
  const { text, palette } = sheet
  const [first, last] = [log[0]!, log.at(-1)!]
  const end = at.place(
    place({
      elapsed_s: last.elapsed_s,
      pressure_Pa: best.start_Pa + leak.best * (last.elapsed_s - first.elapsed_s),
    }),
  )
  const start = at.place(place({ elapsed_s: first.elapsed_s, pressure_Pa: best.start_Pa }))
  return (
    lineIn(at, [start, end], palette.soft, STROKE.thin * text) +
    label(tell(say`leak alone`), end.x, end.y - 0.6 * text, sheet, { fill: palette.soft, anchor: 'end', onPaper: true })
  )
}

const CURVES = {
  steady: say`holds`,
  leak: say`leak: a straight rise`,
  moisture: say`moisture: levels off`,
  'leak-and-moisture': say`leak and moisture`,
} as const

/** Below the middle of the curve and to its right: it rises, so there is room. */
function curveName({ box }: Plot, curve: readonly Point[], { best }: RiseFit, tell: Tell, sheet: Sheet): string {
  const { x, y } = curve[Math.round(0.45 * curve.length)]!
  const below = Math.min(y + 1.4 * sheet.text, box.bottom - 0.4 * sheet.text)
  return label(tell(CURVES[best.kind]), x + 0.6 * sheet.text, below, sheet, { weight: 'bold', onPaper: true })
}

const ring = (x: number, y: number, { text, palette }: Sheet): string =>
  element('circle', {
    cx: x,
    cy: y,
    r: 0.28 * text,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': STROKE.line * text,
  })

function tableOf(log: PressureLog, { fit }: EvacuationFinding, tell: Tell): PictureTable {
  return {
    head: [say`minutes`, say`pressure`, ...(fit ? [say`fitted`] : [])].map(tell),
    rows: log.map(({ elapsed_s, pressure_Pa }) => [
      minutes(elapsed_s).toFixed(1),
      tell(say`${pascals(pressure_Pa)}`),
      ...(fit ? [tell(say`${pascals(pressureAt(fit.best, elapsed_s))}`)] : []),
    ]),
  }
}
