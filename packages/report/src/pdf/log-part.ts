import type { RecordContent } from '../content/record-content.ts'
import { clockOf } from '../content/time-in-words.ts'
import { inHalves } from './in-halves.ts'
import type { PdfNode } from './node.ts'
import { shortened } from './printable.ts'
import { CARE, paragraph, SIZE, section } from './style.ts'

/** Lines of one list that are printed; the data exports have all. */
const MOST_LINES = 24

/** What was done and seen besides, and everything that does not stand as it was entered. */
export const logPart = (
  { happenings, corrections, problems, doubts }: RecordContent,
  gap: number,
): readonly PdfNode[] => [
  ...section(
    'Corrections, problems and doubts',
    capped([
      ...corrections.map(({ at, entered, holds, reasons }) => {
        const why = reasons.length > 0 ? ` (${reasons.join('; ')})` : ''
        return paragraph(shortened(`${clockOf(at)}  ${entered} was corrected: ${holds}${why}`), { color: CARE })
      }),
      ...problems.map((line) => paragraph(shortened(`Not used: ${line}`), { color: CARE })),
      ...doubts.map((line) => paragraph(shortened(`Used, and questioned: ${line}`), { color: CARE })),
    ]),
  ),
  ...section(
    'Seen and done',
    inHalves(capped(happenings.map(({ at, words }) => paragraph(shortened(`${clockOf(at)}  ${words}`)))), gap),
  ),
]

const capped = (lines: readonly PdfNode[]): readonly PdfNode[] =>
  lines.length <= MOST_LINES
    ? lines
    : [
        ...lines.slice(0, MOST_LINES),
        paragraph(`and ${lines.length - MOST_LINES} more, in the data export`, { size: SIZE.small, color: CARE }),
      ]
