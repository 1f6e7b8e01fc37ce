import { scaleLinear, scaleLog } from 'd3-scale'
import { type Axis, tickText } from './axis.ts'
import { type Box, clip } from './clip.ts'
import { label } from './label.ts'
import type { Sheet } from './picture.ts'
import { element, group, type Point, pathThrough } from './svg.ts'
import { textWidth } from './text-width.ts'
import { STROKE } from './tokens.ts'

/** A pair of axes laid out on a sheet: where a value lies, and the thin grid to draw below everything else. */
export interface Plot {
  readonly box: Box
  readonly place: (at: Point) => Point
  readonly grid: string
}

/** @param end a label that starts at this share of the width and must still fit on the sheet */
export function plot(
  sheet: Sheet,
  across: Axis,
  up: Axis,
  end?: { readonly text: string; readonly share: number },
): Plot {
  const { text } = sheet
  const widest = (labels: readonly string[]) => Math.max(0, ...labels.map((each) => textWidth(each, text)))
  const left = widest(up.ticks.map(tickText)) + text
  const edge = sheet.width - Math.max(0.6 * text, widest(across.ticks.slice(-1).map(tickText)) / 2)
  const room = end ? (sheet.width - left - textWidth(end.text, text) - 0.9 * text) / end.share : Infinity
  const box: Box = { left, top: 1.9 * text, right: Math.min(edge, left + room), bottom: sheet.height - 2.9 * text }
  const x = scale(across, [box.left, box.right])
  const y = scale(up, [box.bottom, box.top])
  return {
    box,
    place: (at) => ({ x: x(at.x), y: y(at.y) }),
    grid: grid(sheet, box, { axis: across, at: x }, { axis: up, at: y }),
  }
}

/** A polyline inside the plot, cut at its edges. */
export function lineIn({ box }: Plot, points: readonly Point[], stroke: string, width: number, dash?: string): string {
  return clip(points, box)
    .map((piece) =>
      element('path', {
        d: pathThrough(piece),
        fill: 'none',
        stroke,
        'stroke-width': width,
        'stroke-linejoin': 'round',
        'stroke-dasharray': dash,
      }),
    )
    .join('')
}

/** How far a distance in the reader's units reaches on the sheet, at a place. */
export function reachAt({ place }: Plot, at: Point, distance: Point): Point {
  const [here, there] = [place(at), place({ x: at.x + distance.x, y: at.y + distance.y })]
  return { x: Math.abs(there.x - here.x), y: Math.abs(there.y - here.y) }
}

const scale = ({ kind, from, to }: Axis, range: readonly [number, number]): ((value: number) => number) => {
  const [a, b] = range
  return kind === 'log' ? scaleLog([from, to], [a, b]) : scaleLinear([from, to], [a, b])
}

interface Ruled {
  readonly axis: Axis
  readonly at: (value: number) => number
}

function grid(sheet: Sheet, box: Box, across: Ruled, up: Ruled): string {
  const { text, palette } = sheet
  const soft = { fill: palette.soft }
  const rules = group(
    { stroke: palette.rule, 'stroke-width': STROKE.grid * text },
    ...across.axis.ticks.map(across.at).map((x) => element('line', { x1: x, x2: x, y1: box.top, y2: box.bottom })),
    ...up.axis.ticks.map(up.at).map((y) => element('line', { x1: box.left, x2: box.right, y1: y, y2: y })),
  )
  const ticks = [
    ...across.axis.ticks.map((tick) =>
      label(tickText(tick), across.at(tick), box.bottom + 1.15 * text, sheet, { ...soft, anchor: 'middle' }),
    ),
    ...up.axis.ticks.map((tick) =>
      label(tickText(tick), box.left - 0.5 * text, up.at(tick) + 0.35 * text, sheet, { ...soft, anchor: 'end' }),
    ),
  ]
  const titles = [
    label(up.axis.title, box.left, 0.9 * text, sheet, soft),
    label(across.axis.title, box.right, sheet.height - 0.5 * text, sheet, { ...soft, anchor: 'end' }),
  ]
  return [rules, ...ticks, ...titles].join('')
}
