import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import type { MakersChart } from '@chargewright/visit'
import { t } from '../words/t.ts'
import { type Calibration, calibration, type Mark, type Spot } from './calibration.ts'

/** What was said of a chart before anything was tapped. */
export interface ChartKind {
  readonly indoor: MakersChart['indoor']
  readonly unit: MakersChart['unit']
  /** What runs along the bottom; the curves are of the other. Superheat runs up. */
  readonly across: 'outdoor' | 'indoor'
}

/** One tap on the photo: a mark on an axis with its value, or a point of the curve of that value. */
export interface Tap {
  readonly on: 'across' | 'up' | 'curve'
  readonly value: number
  readonly at: Spot
}

/** What the next tap is for. */
export function nextTap(taps: readonly Tap[]): Tap['on'] {
  if (marksOn('across', taps).length < 2) return 'across'
  return marksOn('up', taps).length < 2 ? 'up' : 'curve'
}

/** The axes as marked so far; undefined while marks are missing or tell nothing. */
export function axesOf(taps: readonly Tap[]): Calibration | undefined {
  const [[a, b], [c, d]] = [marksOn('across', taps), marksOn('up', taps)]
  return a && b && c && d ? calibration([a, b], [c, d]) : undefined
}

const marksOn = (axis: 'across' | 'up', taps: readonly Tap[]): readonly Mark[] => taps.filter(({ on }) => on === axis)

/** A curve in the units of the chart, from left to right. */
export interface Curve {
  readonly value: number
  readonly points: readonly { readonly across: number; readonly up: number }[]
}

/** The tapped curves, by their values from low to high. */
function curvesOf(taps: readonly Tap[], axes: Calibration): readonly Curve[] {
  const tapped = taps.filter(({ on }) => on === 'curve')
  const values = [...new Set(tapped.map(({ value }) => value))].sort((a, b) => a - b)
  return values.map((value) => ({
    value,
    points: tapped
      .filter((tap) => tap.value === value)
      .map(({ at }) => axes.valueAt(at))
      .sort((a, b) => a.across - b.across),
  }))
}

/** A chart as traced, and how far its grid passes by the taps at most, in the unit of the chart. */
export interface Traced {
  readonly chart: Extract<MakersChart, { form: 'grid' }>
  readonly curves: readonly Curve[]
  readonly apart: number
}

/** The grid of a traced chart: between taps on the straight line, nothing beyond them. */
export function traced(taps: readonly Tap[], kind: ChartKind): Result<Traced, Problem> {
  const axes = axesOf(taps)
  if (!axes)
    return fail(missing('axes of the chart', 'two marks on each axis, in different places and of different values'))
  const curves = curvesOf(taps, axes)
  if (curves.length === 0) return fail(missing('curves of the chart', 'at least one curve'))
  const short = curves.find(({ points }) => points.length < 2)
  if (short) return fail(missing(t('curve of {0} {1}', short.value, kind.unit), 'at least two taps along it'))
  const ticks = ticksFor(curves, kind.unit)
  const rows = ticks.map((tick) => curves.map((curve) => rounded(upAt(curve, tick))))
  const columns = curves.map((_, j) => rows.map((row) => row[j] ?? null))
  const values = curves.map(({ value }) => value)
  const chart: Traced['chart'] = {
    form: 'grid',
    indoor: kind.indoor,
    unit: kind.unit,
    outdoorTemperatures: kind.across === 'outdoor' ? ticks : values,
    indoorTemperatures: kind.across === 'outdoor' ? values : ticks,
    superheat: kind.across === 'outdoor' ? rows : columns,
  }
  const gaps = curves.flatMap(({ points }, j) =>
    points.map(({ across, up }) => Math.abs(up - (onGrid(ticks, columns[j]!, across) ?? up))),
  )
  return ok({ chart, curves, apart: Math.max(...gaps) })
}

/** Between two rows of the grid, in degrees of the chart. */
const STEP = { '°F': 5, '°C': 2 } as const
/** A tick that a curve misses by so little still belongs to it: nobody taps the very end. */
const END_SLACK = 0.05

/** Round temperatures over all curves, and the ends of each, so that no stretch of a curve is lost. */
function ticksFor(curves: readonly Curve[], unit: ChartKind['unit']): number[] {
  const step = STEP[unit]
  const ends = curves.flatMap(({ points }) => [tenth(points[0]!.across), tenth(points.at(-1)!.across)])
  const first = Math.ceil(Math.min(...ends) / step)
  const round = Array.from({ length: Math.floor(Math.max(...ends) / step) - first + 1 }, (_, i) => (first + i) * step)
  const inside = ends.filter((end) => round.every((tick) => Math.abs(tick - end) > step / 5))
  return [...new Set([...round, ...inside])].sort((a, b) => a - b)
}

/** On the straight line between the taps around; nothing beyond the ends. */
function upAt({ points }: Curve, across: number): number | undefined {
  const [first, last] = [points[0]!, points.at(-1)!]
  if (across < first.across) return first.across - across <= slackOf(points) ? first.up : undefined
  if (across > last.across) return across - last.across <= slackOf(points) ? last.up : undefined
  const i = points.findIndex((point) => point.across >= across)
  const [before, after] = [points[Math.max(i, 1) - 1]!, points[Math.max(i, 1)]!]
  const run = after.across - before.across
  return run === 0 ? before.up : before.up + ((across - before.across) / run) * (after.up - before.up)
}

/** A tick may lie beyond a curve's end by rounding, or by a small share of the curve. */
const slackOf = (points: Curve['points']): number =>
  Math.max(END_SLACK, 0.02 * (points.at(-1)!.across - points[0]!.across))

function onGrid(ticks: readonly number[], column: readonly (number | null)[], across: number): number | undefined {
  const i = ticks.findIndex((tick) => tick >= across)
  const [a, b] = [column[i - 1], column[i]]
  if (typeof a !== 'number' || typeof b !== 'number') return undefined
  return a + ((across - ticks[i - 1]!) / (ticks[i]! - ticks[i - 1]!)) * (b - a)
}

const tenth = (value: number): number => Math.round(value * 10) / 10
const rounded = (value: number | undefined): number | null => (value === undefined ? null : tenth(value))

const missing = (field: string, accepted: string): Problem => ({ kind: 'missing', field, value: 'nothing', accepted })
