import type { Sheet } from './picture.ts'
import { element, escapeXml } from './svg.ts'
import { textWidth } from './text-width.ts'

export interface LabelStyle {
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly weight?: 'normal' | 'bold'
  readonly fill?: string
  /** Paper behind the letters, where a line may run under them. */
  readonly onPaper?: boolean
}

/**
 * A line of text at its baseline. It is moved sideways as far as it must be to lie wholly on the sheet: a label is
 * never cut, whatever it says.
 */
export function label(text: string, x: number, y: number, sheet: Sheet, style: LabelStyle = {}): string {
  const { anchor = 'start', weight = 'normal', fill = sheet.palette.ink, onPaper = false } = style
  const width = textWidth(text, sheet.text)
  const start = x - (anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width)
  const shift = Math.max(0, Math.min(start, sheet.width - width)) - start
  const words = element(
    'text',
    {
      x: x + shift,
      y,
      fill,
      'text-anchor': anchor === 'start' ? undefined : anchor,
      'font-weight': weight === 'normal' ? undefined : weight,
    },
    escapeXml(text),
  )
  if (!onPaper) return words
  const paper = element('rect', {
    x: start + shift - 0.15 * sheet.text,
    y: y - 0.85 * sheet.text,
    width: width + 0.3 * sheet.text,
    height: 1.1 * sheet.text,
    fill: sheet.palette.paper,
    'fill-opacity': 0.85,
  })
  return paper + words
}
