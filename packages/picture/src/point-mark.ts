import type { Sheet } from './picture.ts'
import { element, type Point } from './svg.ts'
import { STROKE } from './tokens.ts'

/**
 * What was found, as a ring, on a shaded ellipse: the region in which the true value lies with the coverage that every
 * ± of the project has.
 */
export function pointMark({ x, y }: Point, reach: Point, { text, palette }: Sheet): string {
  const ring = 0.38 * text
  const region = element('ellipse', {
    cx: x,
    cy: y,
    rx: Math.max(reach.x, ring),
    ry: Math.max(reach.y, ring),
    fill: palette.care,
    'fill-opacity': 0.2,
  })
  const mark = element('circle', {
    cx: x,
    cy: y,
    r: ring,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': STROKE.heavy * text,
  })
  return region + mark
}
