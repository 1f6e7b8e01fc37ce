import type { Assessment } from '@chargewright/charging'
import type { Visit } from '@chargewright/visit'
import type { QuantityCell } from './content/quantity-cell.ts'
import { type RecordContent, type RecordOptions, recordContent } from './content/record-content.ts'

const HEAD = ['section', 'item', 'typed', 'value', 'converted', 'si', 'si expanded uncertainty', 'time', 'remark']

/** One line of the table, by the names of its columns. */
interface Line {
  readonly section: string
  readonly item: string
  readonly typed?: string
  readonly quantity?: QuantityCell
  readonly value?: string
  readonly time?: string
  readonly remark?: string
}

/**
 * The record as one table (RFC 4180: commas, quotes where they are needed, CR LF), a line for every fact. A text that a
 * spreadsheet would take for a formula gets an apostrophe before it.
 */
export function recordCsv(visit: Visit, assessment: Assessment, options: RecordOptions): string {
  const lines = linesOf(recordContent(visit, assessment, options)).map(
    ({ section, item, typed = '', quantity, value = quantity?.shown ?? '', time = '', remark = '' }) => [
      section,
      item,
      typed,
      value,
      quantity?.other ?? '',
      quantity ? String(quantity.si) : '',
      quantity?.expandedUncertainty === undefined ? '' : String(quantity.expandedUncertainty),
      time,
      remark,
    ],
  )
  return [HEAD, ...lines].map((cells) => `${cells.map(cell).join(',')}\r\n`).join('')
}

function linesOf(content: RecordContent): readonly Line[] {
  const { system, visit, finding, method, readings, moves, checks = [] } = content
  const source = (number: number | undefined) => (number === undefined ? '' : (content.sources[number - 1] ?? ''))
  return [
    { section: 'record', item: 'visit', value: visit.id, time: visit.from, remark: visit.about ?? '' },
    { section: 'record', item: 'made', value: `rules ${content.rules}`, time: content.created, remark: content.note },
    { section: 'system', item: 'Name', value: system.name },
    ...system.rows.map(({ label, value, quantity }) =>
      quantity ? { section: 'system', item: label, typed: value, quantity } : { section: 'system', item: label, value },
    ),
    { section: 'finding', item: finding.word, value: finding.sentence },
    ...(method ? [{ section: 'method', item: method.name, value: method.because }] : []),
    ...finding.reasons.map(({ depth, text, source: number }) => ({
      section: 'reason',
      item: String(depth),
      value: text,
      remark: source(number),
    })),
    ...finding.steps.map((value, i) => ({ section: 'step', item: String(i + 1), value })),
    ...finding.next.map((value, i) => ({ section: 'would tell more', item: String(i + 1), value })),
    ...content.conditions.map(({ state, statement, remedy = '' }) => ({
      section: 'condition',
      item: state,
      value: statement,
      remark: remedy,
    })),
    ...content.lookAlikes.map(({ label, verdict, statement }) => ({
      section: 'look-alike',
      item: label,
      value: verdict,
      remark: statement,
    })),
    ...content.cautions.map(({ statement, source: number }) => ({
      section: 'caution',
      item: '',
      value: statement,
      remark: source(number),
    })),
    ...readings.flatMap(({ label, typed, quantity, at, doubt = '', earlier }) => [
      ...earlier.map((before) => ({ section: 'earlier reading', item: label, typed: before.typed, time: before.at })),
      { section: 'reading', item: label, typed, quantity, time: at, remark: doubt },
    ]),
    ...content.measures.map(({ label, quantity }) => ({ section: 'derived', item: label, quantity })),
    ...moves.map(({ at, direction, typed, quantity, how, cylinder, refrigerant }) => ({
      section: 'refrigerant',
      item: direction,
      typed,
      quantity,
      time: at,
      remark: `${how}; cylinder ${cylinder}; ${refrigerant}`,
    })),
    ...content.cylinders.flatMap(({ cylinder, refrigerant, gave, took }) => [
      { section: 'cylinder', item: cylinder, quantity: gave, remark: `gave, ${refrigerant}` },
      { section: 'cylinder', item: cylinder, quantity: took, remark: `took, ${refrigerant}` },
    ]),
    ...checks.flatMap(({ title, verdict, sentence, at = '', reasons }) => [
      { section: 'check', item: title, value: verdict, time: at, remark: sentence },
      ...reasons.map(({ text, source: number }) => ({
        section: 'check reason',
        item: title,
        value: text,
        remark: source(number),
      })),
    ]),
    ...content.happenings.map(({ at, words }) => ({ section: 'log', item: '', value: words, time: at })),
    ...content.corrections.map(({ at, entered, holds, reasons }) => ({
      section: 'correction',
      item: entered,
      value: holds,
      time: at,
      remark: reasons.join('; '),
    })),
    ...content.problems.map((value) => ({ section: 'problem', item: 'not used', value })),
    ...content.doubts.map((value) => ({ section: 'doubt', item: 'used, and questioned', value })),
  ]
}

function cell(text: string): string {
  const plain = /^[=@\t\r]|^[+-](?![\d.,\s])/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain
}
