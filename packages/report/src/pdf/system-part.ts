import { say, type Tell, verbatim } from '@chargewright/quantity'
import { isTyped } from '@chargewright/visit'
import type { RecordContent } from '../content/record-content.ts'
import { clockOf, dayOf, timeOf } from '../content/time-in-words.ts'
import type { PdfNode } from './node.ts'
import { shortened } from './printable.ts'
import { CARE, INK, paragraph, SIZE, SOFT } from './style.ts'

/** Whose record this is, of when and by whom; and what is known of the system, in one paragraph. */
export function systemPart({ system, visit }: RecordContent, width: number, tell: Tell): readonly PdfNode[] {
  const day = visit.from === '' ? tell(say`nothing entered yet`) : span(visit, tell)
  const people = visit.by.filter((by) => isTyped({ by }))
  const others = visit.by.filter((by) => !isTyped({ by })).map((by) => tell(say`${by}`))
  const about = [
    ...(people.length > 0 ? [say`Entered by ${verbatim(people.join(', '))}.`] : []),
    ...(others.length > 0 ? [say`Not typed in this visit: ${verbatim(others.join('; '))}.`] : []),
    say`Visit ${verbatim(visit.id)}.`,
    say`${verbatim(visit.zone)}`,
  ]
  const facts = system.rows.map(({ label, value, quantity }) => {
    const converted = quantity && plain(quantity.shown) !== plain(value) ? ` (${quantity.shown})` : ''
    const stated = `${value}${converted}`
    // A value and its unit stay on one line.
    return `${label} ${quantity ? stated.replaceAll(' ', '\u00a0') : stated}`
  })
  return [
    {
      columns: [
        { width: '*', ...paragraph(shortened(system.name, tell, 80), { size: SIZE.name, bold: true }) },
        {
          width: 'auto',
          ...paragraph(`${tell(say`Service record`)} · ${day}`, { size: SIZE.body, color: SOFT, margin: [0, 4, 0, 0] }),
        },
      ],
      columnGap: 12,
    },
    paragraph(facts.length > 0 ? facts.join(' · ') : tell(say`The system is not described yet.`), {
      margin: [0, 2, 0, 1],
    }),
    paragraph(shortened(about.map(tell).join(' '), tell, 320), { size: SIZE.small, color: SOFT }),
    ...(visit.about === undefined
      ? []
      : [paragraph(shortened(visit.about, tell, 320), { size: SIZE.small, color: CARE })]),
    rule(width, 1.2),
  ]
}

/** `3 ton` and `3.0 ton` say the same. */
const plain = (value: string): string => value.replace(/\.0+(?!\d)/g, '').replace(/\s/g, '')

export const rule = (width: number, lineWidth: number): PdfNode => ({
  canvas: [{ type: 'line', x1: 0, y1: 0, x2: width, y2: 0, lineWidth, lineColor: INK }],
  margin: [0, 4, 0, 0],
})

function span({ from, to, offset }: RecordContent['visit'], tell: Tell): string {
  const end = dayOf(from) === dayOf(to) ? clockOf(to, offset) : timeOf(to, offset)
  return tell(say`${verbatim(`${dayOf(from)}, ${clockOf(from, offset)}`)} to ${verbatim(end)}`)
}
