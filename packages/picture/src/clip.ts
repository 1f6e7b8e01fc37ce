import type { Point } from './svg.ts'

/** A rectangle of the sheet; y grows downwards, so `top` is the smaller number. */
export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** The pieces of a polyline that lie inside a box, cut at its edges. */
export function clip(points: readonly Point[], box: Box): readonly (readonly Point[])[] {
  const pieces: Point[][] = []
  for (let i = 1; i < points.length; i++) {
    const part = clipSegment(points[i - 1]!, points[i]!, box)
    if (!part) continue
    const open = pieces.at(-1)
    const last = open?.at(-1)
    if (open && last && last.x === part[0].x && last.y === part[0].y) open.push(part[1])
    else pieces.push([...part])
  }
  return pieces
}

/** Liang and Barsky's clipping of one segment: the shares of its length at which it enters and leaves. */
function clipSegment(a: Point, b: Point, { left, top, right, bottom }: Box): readonly [Point, Point] | undefined {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  let [enter, leave] = [0, 1]
  for (const [run, room] of [
    [-dx, a.x - left],
    [dx, right - a.x],
    [-dy, a.y - top],
    [dy, bottom - a.y],
  ] as const) {
    if (run === 0 && room < 0) return undefined
    if (run < 0) enter = Math.max(enter, room / run)
    if (run > 0) leave = Math.min(leave, room / run)
  }
  if (!(enter < leave)) return undefined
  const at = (share: number): Point =>
    share === 0 ? a : share === 1 ? b : { x: a.x + share * dx, y: a.y + share * dy }
  return [at(enter), at(leave)]
}
