import type { Assessment } from '@chargewright/charging'
import { preferredUnit, type Statement, say, type Tell, teller, verbatim } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { ENGLISH } from './content/language.ts'
import { type RecordContent, type RecordOptions, recordContent } from './content/record-content.ts'
import { timeOf } from './content/time-in-words.ts'
import { KEPT } from './pdf/breaks-before.ts'
import { checksPart } from './pdf/checks-part.ts'
import { findingPart, reasonsPart } from './pdf/finding-part.ts'
import { logPart } from './pdf/log-part.ts'
import type { PdfDefinition, PdfNode } from './pdf/node.ts'
import { picturesPart } from './pdf/pictures-part.ts'
import { printable } from './pdf/printable.ts'
import { heading, paragraph, SIZE, SOFT } from './pdf/style.ts'
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
  const { preference, created, language = ENGLISH } = options
  const tell = teller(preference, language.words)
  const pageSize = options.paper ?? (preferredUnit('temperature', preference).symbol === '°F' ? 'LETTER' : 'A4')
  const width = WIDTHS[pageSize] - 2 * MARGIN
  const content = recordContent(visit, assessment, options)
  const wordsWidth = WORDS * (width - GAP)
  const pictures = picturesPart(visit, assessment, preference, width - GAP - wordsWidth, language.words)
  const rules = tell(say`rules ${verbatim(content.rules)}`)
  const made = tell(say`made ${verbatim(timeOf(created, content.visit.offset))}`)
  return {
    pageSize,
    pageMargins: [MARGIN, 32, MARGIN, 40],
    info: {
      title: printable(tell(say`Service record, ${verbatim(content.system.name.slice(0, 80))}`)),
      subject: printable(content.finding.sentence),
      creator: `Chargewright, ${rules}`,
    },
    created,
    language: language.tag,
    foot: printable(`Chargewright, ${rules} · ${made} · ${tell(say`visit ${verbatim(visit.id.slice(0, 60))}`)}`),
    pageOfPages: tell(say`${verbatim('{0}')} of ${verbatim('{1}')}`),
    content: [
      ...systemPart(content, width, tell),
      findingPart(content, tell),
      beside([...reasonsPart(content, tell), ...conditionsPart(content, tell)], pictures, wordsWidth),
      ...readingsPart(content, tell),
      ...measuresPart(content, GAP, tell),
      ...weightsPart(content, tell),
      ...checksPart(content, GAP, tell),
      ...logPart(content, GAP, tell),
      ...sourcesPart(content, tell),
      ...signaturePart(content, width, tell),
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

function sourcesPart({ sources }: RecordContent, tell: Tell): readonly PdfNode[] {
  if (sources.length === 0) return []
  const list = sources.map((source, i) => `[${i + 1}]\u00a0${source}`).join(' · ')
  return [
    { ...heading(tell(say`Sources`)), headlineLevel: KEPT.sourcesHeading },
    { ...paragraph(list, { size: SIZE.small, color: SOFT }), headlineLevel: KEPT.sources },
  ]
}

/** The lines to sign on, and what a signature stands under. */
function signaturePart({ note }: RecordContent, width: number, tell: Tell): readonly PdfNode[] {
  const line = (under: Statement, share: number): PdfNode => ({
    width: share * (width - 2 * GAP),
    stack: [rule(share * (width - 2 * GAP), 0.6), paragraph(tell(under), { size: SIZE.small, color: SOFT })],
  })
  return [
    { ...paragraph(note, { size: SIZE.small, margin: [0, 8, 0, 24] }), headlineLevel: KEPT.signature },
    {
      columns: [line(say`Technician`, 0.4), line(say`For the owner`, 0.4), line(say`Date`, 0.2)],
      columnGap: GAP,
      headlineLevel: KEPT.signature,
    },
  ]
}
