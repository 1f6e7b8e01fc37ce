import type { Assessment } from '@chargewright/charging'
import { preferredUnit } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { type RecordContent, type RecordOptions, recordContent } from './content/record-content.ts'
import { timeOf } from './content/time-in-words.ts'
import { checksPart } from './pdf/checks-part.ts'
import { findingPart, reasonsPart } from './pdf/finding-part.ts'
import { logPart } from './pdf/log-part.ts'
import type { PdfDefinition, PdfNode } from './pdf/node.ts'
import { picturesPart } from './pdf/pictures-part.ts'
import { printable } from './pdf/printable.ts'
import { paragraph, SIZE, SOFT, section } from './pdf/style.ts'
import { rule, systemPart } from './pdf/system-part.ts'
import { conditionsPart, measuresPart, readingsPart, weightsPart } from './pdf/tables-part.ts'

const MARGIN = 36
const WIDTHS = { A4: 595.28, LETTER: 612 } as const
const GAP = 20
/** Share of the page that the words take beside the pictures. */
const WORDS = 0.55

/**
 * The service record of a visit as a document definition: plain data, the same for the same arguments, to be handed to
 * `renderPdf`. One or two pages for a visit of usual length; more where more was weighed or checked.
 */
export function serviceRecord(visit: Visit, assessment: Assessment, options: RecordOptions): PdfDefinition {
  const { preference, created } = options
  const pageSize = options.paper ?? (preferredUnit('temperature', preference).symbol === '°F' ? 'LETTER' : 'A4')
  const width = WIDTHS[pageSize] - 2 * MARGIN
  const content = recordContent(visit, assessment, options)
  const wordsWidth = WORDS * (width - GAP)
  const pictures = picturesPart(visit, assessment, preference, width - GAP - wordsWidth)
  return {
    pageSize,
    pageMargins: [MARGIN, 32, MARGIN, 40],
    info: {
      title: printable(`Service record, ${content.system.name.slice(0, 80)}`),
      subject: printable(content.finding.sentence),
      creator: `Chargewright, rules ${content.rules}`,
    },
    created,
    language: 'en',
    foot: printable(`Chargewright, rules ${content.rules} · made ${timeOf(created)} · visit ${visit.id.slice(0, 60)}`),
    content: [
      ...systemPart(content, width),
      findingPart(content),
      beside([...reasonsPart(content), ...conditionsPart(content)], pictures, wordsWidth),
      ...readingsPart(content),
      ...measuresPart(content, GAP),
      ...weightsPart(content),
      ...checksPart(content, GAP),
      ...logPart(content, GAP),
      ...sourcesPart(content),
      signaturePart(content, width),
    ],
  }
}

/** Two columns; the whole width where only one has something to say. */
function beside(left: readonly PdfNode[], right: readonly PdfNode[], leftWidth: number): PdfNode {
  if (left.length === 0 || right.length === 0) return { stack: [...left, ...right] }
  return {
    columns: [
      { width: leftWidth, stack: left },
      { width: '*', stack: right },
    ],
    columnGap: GAP,
  }
}

const sourcesPart = ({ sources }: RecordContent): readonly PdfNode[] =>
  section(
    'Sources',
    sources.length === 0
      ? []
      : [
          paragraph(sources.map((source, i) => `[${i + 1}]\u00a0${source}`).join(' · '), {
            size: SIZE.small,
            color: SOFT,
          }),
        ],
  )

/** The lines to sign on, and what a signature stands under. */
function signaturePart({ note }: RecordContent, width: number): PdfNode {
  const line = (words: string, share: number): PdfNode => ({
    width: share * (width - 2 * GAP),
    stack: [rule(share * (width - 2 * GAP), 0.6), paragraph(words, { size: SIZE.small, color: SOFT })],
  })
  return {
    stack: [
      paragraph(note, { size: SIZE.small, margin: [0, 8, 0, 24] }),
      { columns: [line('Technician', 0.4), line('For the owner', 0.4), line('Date', 0.2)], columnGap: GAP },
    ],
    unbreakable: true,
  }
}
