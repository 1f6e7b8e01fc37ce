import { type Statement, say, type Tell, verbatim } from '@chargewright/quantity'
import type { RecordContent } from '../content/record-content.ts'
import { clockOf } from '../content/time-in-words.ts'
import { inHalves } from './in-halves.ts'
import type { PdfNode } from './node.ts'
import { shortened } from './printable.ts'
import { CARE, paragraph, SIZE, section } from './style.ts'

/** Lines of one list that are printed; the data exports have all. */
const MOST_LINES = 24

/** What was done and seen besides, and everything that does not stand as it was entered. */
export function logPart(
  { visit, happenings, corrections, problems, doubts }: RecordContent,
  gap: number,
  tell: Tell,
): readonly PdfNode[] {
  const remark = (statement: Statement) => paragraph(shortened(tell(statement), tell), { color: CARE })
  return [
    ...section(
      tell(say`Corrections, problems and doubts`),
      capped(
        [
          ...corrections.map(({ at, entered, holds, reasons }) => {
            const why = reasons.length > 0 ? ` (${reasons.join('; ')})` : ''
            const [what, now] = [verbatim(`${clockOf(at, visit.offset)}  ${entered}`), verbatim(holds + why)]
            return remark(say`${what} was corrected: ${now}`)
          }),
          ...problems.map((line) => remark(say`Not used: ${verbatim(line)}`)),
          ...doubts.map((line) => remark(say`Used, and questioned: ${verbatim(line)}`)),
        ],
        tell,
      ),
    ),
    ...section(
      tell(say`Seen and done`),
      inHalves(
        capped(
          happenings.map(({ at, words }) => paragraph(shortened(`${clockOf(at, visit.offset)}  ${words}`, tell))),
          tell,
        ),
        gap,
      ),
    ),
  ]
}

const capped = (lines: readonly PdfNode[], tell: Tell): readonly PdfNode[] =>
  lines.length <= MOST_LINES
    ? lines
    : [
        ...lines.slice(0, MOST_LINES),
        paragraph(tell(say`and ${lines.length - MOST_LINES} more, in the data export`), {
          size: SIZE.small,
          color: CARE,
        }),
      ]
