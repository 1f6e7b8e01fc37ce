import { findingMark } from '@chargewright/picture'
import { say, type Tell } from '@chargewright/quantity'
import type { RecordContent } from '../content/record-content.ts'
import type { PdfNode } from './node.ts'
import { CARE, cited, paragraph, SIZE, SOFT, section } from './style.ts'

const MARK = 46

/** The verdict on top: its sign, its word, its sentence, and by which method. */
export function findingPart({ finding, method }: RecordContent, tell: Tell): PdfNode {
  const by = method ? `${method.name}: ${method.because}` : tell(say`no method could be chosen yet`)
  return {
    columns: [
      { svg: findingMark(finding.kind, MARK), width: MARK },
      {
        width: '*',
        stack: [
          paragraph(`${capital(finding.word)} · ${by}`, { size: SIZE.small, color: SOFT }),
          paragraph(finding.sentence, { size: SIZE.sentence, bold: true, margin: [0, 1, 0, 0] }),
        ],
      },
    ],
    columnGap: 10,
    margin: [0, 8, 0, 2],
  }
}

/** Why, what to do, what to enter, and what could hurt. */
export function reasonsPart({ finding, cautions }: RecordContent, tell: Tell): readonly PdfNode[] {
  return [
    ...section(
      tell(say`Why`),
      finding.reasons.map(({ depth, text, source }) => {
        const words = cited(text, source)
        return depth === 0
          ? paragraph(words, { bold: true, margin: [0, 3, 0, 1] })
          : paragraph(words, { size: SIZE.small, color: SOFT, margin: [8 * Math.min(depth, 5), 0, 0, 0] })
      }),
    ),
    ...section(tell(say`What to do`), numbered(finding.steps)),
    ...section(tell(say`What would tell more`), numbered(finding.next)),
    ...section(
      tell(say`Care`),
      cautions.map(({ statement, source }) =>
        paragraph(cited(statement, source), { color: CARE, margin: [0, 0, 0, 1.5] }),
      ),
    ),
  ]
}

const numbered = (lines: readonly string[]): readonly PdfNode[] =>
  lines.map((line, i) => paragraph(`${i + 1}. ${line}`, { margin: [0, 0, 0, 1.5] }))

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)
