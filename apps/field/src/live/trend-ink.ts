import type uPlot from 'uplot'

/** Colours and letters of the page, for a drawing that cannot follow its style sheet. */
export interface Ink {
  readonly ink: string
  readonly soft: string
  readonly rule: string
  readonly wash: string
  readonly paper: string
  readonly font: string
}

export function inkOf(page: HTMLElement): Ink {
  const style = getComputedStyle(page)
  const token = (name: string) => style.getPropertyValue(name).trim()
  return {
    ink: token('--ink'),
    soft: token('--soft'),
    rule: token('--rule'),
    wash: token('--wash'),
    paper: token('--paper'),
    font: `14px ${token('--type')}`,
  }
}

const LINE_PX = 16

/** Shades the stretches in which everything held still, and says so over the last of them. */
export function drawSettled(plot: uPlot, stretches: readonly (readonly [number, number])[], ink: Ink): void {
  const { ctx, bbox } = plot
  ctx.save()
  ctx.fillStyle = ink.wash
  for (const [from, to] of stretches) {
    const left = plot.valToPos(from, 'x', true)
    ctx.fillRect(left, bbox.top, plot.valToPos(to, 'x', true) - left, bbox.height)
  }
  const last = stretches.at(-1)
  if (last) {
    write(plot, ink, ink.soft)
    ctx.textAlign = 'right'
    ctx.fillText('settled', plot.valToPos(last[1], 'x', true), bbox.top - 6 * devicePixelRatio)
  }
  ctx.restore()
}

/** The name of every line over its end, moved up or down where two would meet; the unit over the axis. */
export function drawEndLabels(plot: uPlot, names: readonly string[], unit: string, ink: Ink): void {
  const { ctx, bbox } = plot
  ctx.save()
  write(plot, ink, ink.soft)
  ctx.fillText(unit, bbox.left, bbox.top - 6 * devicePixelRatio)
  const ends = names
    .map((name, i) => ({ name, y: endOf(plot, i + 1) }))
    .filter(({ y }) => Number.isFinite(y))
    .toSorted((a, b) => a.y - b.y)
  const room = LINE_PX * devicePixelRatio
  ctx.textAlign = 'right'
  const right = bbox.left + bbox.width - 4 * devicePixelRatio
  let taken = bbox.top - 0.35 * room
  const places = ends.map(({ name, y }) => {
    taken = Math.max(taken + room, y - 0.3 * room)
    return { name, y: taken }
  })
  const over = Math.max(0, taken - (bbox.top + bbox.height - 0.3 * room))
  for (const { name, y } of places) {
    const width = ctx.measureText(name).width
    ctx.fillStyle = ink.paper
    ctx.globalAlpha = 0.8
    ctx.fillRect(right - width - 2, y - over - 0.8 * room, width + 4, room)
    ctx.globalAlpha = 1
    ctx.fillStyle = ink.ink
    ctx.fillText(name, right, y - over)
  }
  ctx.restore()
}

function write({ ctx }: uPlot, { font }: Ink, fill: string): void {
  ctx.font = font.replace(/^\d+px/, `${14 * devicePixelRatio}px`)
  ctx.fillStyle = fill
  ctx.textBaseline = 'alphabetic'
  ctx.textAlign = 'left'
}

function endOf(plot: uPlot, series: number): number {
  const values: readonly (number | null | undefined)[] = [...(plot.data[series] ?? [])]
  const last = values.findLast((each) => typeof each === 'number')
  return typeof last === 'number' ? plot.valToPos(last, 'y', true) : Number.NaN
}
