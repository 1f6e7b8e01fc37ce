import { pascal, type Tell } from '@chargewright/quantity'
import { type Refrigerant, saturationAtPressure } from '@chargewright/refrigerant'
import { besideLabels, levelLabel } from './cycle-labels.ts'
import type { CyclePoint, CyclePoints, Level } from './cycle-points.ts'
import { label } from './label.ts'
import type { Sheet } from './picture.ts'
import type { Place, Run } from './run.ts'
import { element, type Point, pathThrough } from './svg.ts'
import { STROKE } from './tokens.ts'

/** The cycle in heavy ink, and shaded what is uncertain of it. Only what was read is drawn: a gap stays a gap. */
export function cycleDrawing(
  cycle: CyclePoints,
  refrigerant: Refrigerant,
  place: Place,
  tell: Tell,
  sheet: Sheet,
): string {
  const { low, high, points } = cycle
  const at = (station: CyclePoint['station']) => points.find((point) => point.station === station)?.state
  const [outlet, suction, discharge, liquid] = [at(1), at(2), at(3), at(5)]
  const warmest = suction ?? outlet
  const condensed = discharge?.enthalpy ?? acrossDome(refrigerant, high)?.to
  const lowRun = low && liquid && warmest && { level: low, from: liquid.enthalpy, to: warmest.enthalpy }
  const highRun = high && liquid && condensed ? { level: high, from: liquid.enthalpy, to: condensed } : undefined
  const loneLow = lowRun ? undefined : acrossDome(refrigerant, low)
  const loneHigh = highRun ? undefined : acrossDome(refrigerant, high)
  const alone = [loneLow, loneHigh].filter((run) => run !== undefined)
  const runs = [lowRun, highRun].filter((run) => run !== undefined)
  const strokes = [
    ...runs.map(({ level: { pressure }, from, to }) => [
      { enthalpy: from, pressure },
      { enthalpy: to, pressure },
    ]),
    ...(liquid && low ? [[liquid, { enthalpy: liquid.enthalpy, pressure: low.pressure }]] : []),
    ...(warmest && discharge ? [[warmest, discharge]] : []),
  ]
  return [
    ...[...runs, ...alone].map((run) => bandOf(run, place, sheet)),
    ...points.map((point) => regionOf(point, place, sheet)),
    ...strokes.map((states) => inkLine(states.map(place), sheet)),
    ...alone.map(({ level: { pressure }, from, to }) => {
      const ends = [from, to].map((enthalpy) => place({ enthalpy, pressure }))
      return inkLine(ends, sheet, STROKE.line)
    }),
    ...[lowRun ?? loneLow].map((run) => (run ? levelLabel(run, 'dew', 1.25, place, tell, sheet) : '')),
    ...[highRun ?? loneHigh].map((run) => (run ? levelLabel(run, 'bubble', -0.6, place, tell, sheet) : '')),
    ...besideLabels(cycle, lowRun, highRun, place, tell, sheet),
    ...points.map((point) => stationMark(point, place, sheet)),
  ].join('')
}

/** A level whose states were not read: from bubble to dew, as far as it is sure to reach. */
function acrossDome(refrigerant: Refrigerant, level: Level | undefined): Run | undefined {
  if (!level) return undefined
  const at = saturationAtPressure(refrigerant, pascal(level.pressure))
  return at.ok ? { level, from: at.value.bubble.enthalpy_J_kg, to: at.value.dew.enthalpy_J_kg } : undefined
}

const inkLine = (path: readonly Point[], { text, palette }: Sheet, width: number = STROKE.heavy): string =>
  element('path', {
    d: pathThrough(path),
    fill: 'none',
    stroke: palette.ink,
    'stroke-width': width * text,
    'stroke-linecap': 'round',
  })

const shade = (corners: readonly Point[], { palette }: Sheet): string =>
  corners.length === 0
    ? ''
    : element('path', { d: pathThrough(corners, true), fill: palette.care, 'fill-opacity': 0.25 })

function bandOf({ level, from, to }: Run, place: Place, sheet: Sheet): string {
  const corner = (enthalpy: number, pressure: number) => place({ enthalpy, pressure })
  return shade([corner(from, level.from), corner(to, level.from), corner(to, level.to), corner(from, level.to)], sheet)
}

const regionOf = ({ region }: CyclePoint, place: Place, sheet: Sheet): string => shade(region.map(place), sheet)

/** Where the number of a station stands beside its ring, in letter heights, so that no two meet. */
const NUMBER_AT = { 1: [-0.1, -0.8], 2: [0.5, 1.2], 3: [0.6, -0.5], 5: [-1.1, -0.4] } as const

function stationMark({ station, state }: CyclePoint, place: Place, sheet: Sheet): string {
  const { text, palette } = sheet
  const { x, y } = place(state)
  const [dx, dy] = NUMBER_AT[station]
  const ring = element('circle', {
    cx: x,
    cy: y,
    r: 0.36 * text,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': STROKE.heavy * text,
  })
  return ring + label(String(station), x + dx * text, y + dy * text, sheet, { weight: 'bold' })
}
