import { type Quantity, quantity, say, type Tell } from '@chargewright/quantity'
import { type LabelStyle, label } from './label.ts'
import type { Sheet } from './picture.ts'
import { element, type Point } from './svg.ts'
import { textWidth } from './text-width.ts'
import { STROKE } from './tokens.ts'

/** A point found, and its target straight above or below it. */
interface Apart {
  readonly mark: Point
  readonly goal: Point
  /** How far to either side the mark of the point reaches. */
  readonly clear: number
  /** Where the plot begins: labels to the left of the point end there. */
  readonly left: number
}

/** What is still to go, as a dotted line from the point to its target with the distance; nothing where they touch. */
export function fromTarget(apart: Apart, value: Quantity, target: Quantity, tell: Tell, sheet: Sheet): string {
  const { mark, goal } = apart
  const { text, palette } = sheet
  const length = Math.abs(mark.y - goal.y)
  if (length < text) return ''
  const line = element('line', {
    x1: mark.x,
    y1: mark.y,
    x2: goal.x,
    y2: goal.y,
    stroke: palette.care,
    'stroke-width': STROKE.heavy * text,
    'stroke-dasharray': `${0.22 * text} ${0.26 * text}`,
  })
  if (length < 2.6 * text) return line
  const distance = quantity('temperature difference', Math.abs(value.si - target.si))
  const words = tell(value.si > target.si ? say`${distance} above target` : say`${distance} below target`)
  return line + beside({ ...apart, clear: 0.4 * text }, words, (mark.y + goal.y) / 2, sheet, { fill: palette.care })
}

/** What was found, written beside its point. */
export const pointLabel = (apart: Apart, words: string, sheet: Sheet): string =>
  beside(apart, words, apart.mark.y, sheet, { weight: 'bold' })

/** Above the target there is room to the right of a point, below it to the left: curves fall from left to right. */
function beside({ mark, goal, clear, left }: Apart, words: string, y: number, sheet: Sheet, style: LabelStyle): string {
  const away = clear + 0.5 * sheet.text
  const fitsLeft = mark.x - away - textWidth(words, sheet.text) > left
  const toLeft = mark.y > goal.y && fitsLeft
  const x = toLeft ? mark.x - away : mark.x + away
  return label(words, x, y + 0.35 * sheet.text, sheet, { ...style, anchor: toLeft ? 'end' : 'start', onPaper: true })
}
