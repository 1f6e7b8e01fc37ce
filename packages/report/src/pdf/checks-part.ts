import { say, type Tell } from '@chargewright/quantity'
import type { CheckInWords } from '../content/check.ts'
import type { RecordContent } from '../content/record-content.ts'
import { timeOf } from '../content/time-in-words.ts'
import { inHalves } from './in-halves.ts'
import type { PdfNode } from './node.ts'
import { shortened } from './printable.ts'
import { cited, paragraph, SIZE, SOFT, section } from './style.ts'

/** What was checked beside the readings; no table and not kept whole, so that many reasons may break over pages. */
export const checksPart = ({ checks = [], visit }: RecordContent, gap: number, tell: Tell): readonly PdfNode[] =>
  section(
    tell(say`Checks`),
    inHalves(
      checks.map((check) => checkPart(check, visit.offset, tell)),
      gap,
    ),
  )

const checkPart = (
  { title, verdict, sentence, reasons, at }: CheckInWords,
  offset: string | undefined,
  tell: Tell,
): PdfNode => ({
  stack: [
    paragraph(shortened(`${title}: ${verdict}${at === undefined ? '' : ` · ${timeOf(at, offset)}`}`, tell), {
      bold: true,
      margin: [0, 3, 0, 1],
    }),
    paragraph(shortened(sentence, tell)),
    ...reasons.map(({ depth, text, source }) =>
      paragraph(cited(shortened(text, tell), source), {
        size: SIZE.small,
        color: SOFT,
        margin: [8 * Math.min(depth + 1, 6), 0, 0, 0],
      }),
    ),
  ],
})
