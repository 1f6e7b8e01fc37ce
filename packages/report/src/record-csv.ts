import type { Assessment } from '@chargewright/charging'
import { say, type Tell, teller, verbatim } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { DIRECTIONS, STATES, VERDICTS } from './content/code-in-words.ts'
import { ENGLISH } from './content/language.ts'
import type { QuantityCell } from './content/quantity-cell.ts'
import { type RecordContent, type RecordOptions, recordContent } from './content/record-content.ts'

const HEAD = [
  'section',
  'item',
  'typed',
  'value',
  'converted',
  'si',
  'si expanded uncertainty',
  'time',
  'remark',
  'key',
]

/** One line of the table, by the names of its columns. */
interface Line {
  readonly section: string
  readonly item: string
  readonly typed?: string
  readonly quantity?: QuantityCell
  readonly value?: string
  readonly time?: string
  readonly remark?: string
  /** What the line is about, the same in every language. */
  readonly key?: string
}

/**
 * The record as one table (RFC 4180: commas, quotes where they are needed, CR LF), a line for every fact. A text that a
 * spreadsheet would take for a formula gets an apostrophe before it. The names of columns and sections and the keys are
 * the same in every language, and so is the decimal point.
 */
export function recordCsv(visit: Visit, assessment: Assessment, options: RecordOptions): string {
  const { preference, language = ENGLISH } = options
  const tell = teller(preference, language.words)
  const lines = linesOf(recordContent(visit, assessment, options), tell).map(
    ({ section, item, typed = '', quantity, value = quantity?.shown ?? '', time = '', remark = '', key = '' }) => [
      section,
      item,
      typed,
      value,
      quantity?.other ?? '',
      quantity ? String(quantity.si) : '',
      quantity?.expandedUncertainty === undefined ? '' : String(quantity.expandedUncertainty),
      time,
      remark,
      key,
    ],
  )
  return [HEAD, ...lines].map((cells) => `${cells.map(cell).join(',')}\r\n`).join('')
}

function linesOf(content: RecordContent, tell: Tell): readonly Line[] {
  const { system, visit, finding, method, readings, moves, checks = [] } = content
  const source = (number: number | undefined) => (number === undefined ? '' : (content.sources[number - 1] ?? ''))
  return [
    { section: 'record', item: tell(say`visit`), value: visit.id, time: visit.from, remark: visit.about ?? '' },
    {
      section: 'record',
      item: tell(say`made`),
      value: tell(say`rules ${verbatim(content.rules)}`),
      time: content.created,
      remark: content.note,
    },
    { section: 'system', item: tell(say`Name`), value: system.name, key: 'name' },
    ...system.rows.map(({ what, label, value, quantity, typed = '' }) => ({
      section: 'system',
      item: label,
      ...(quantity ? { typed: value, quantity } : { typed, value }),
      key: what,
    })),
    { section: 'finding', item: finding.word, value: finding.sentence, key: finding.kind },
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
      item: tell(STATES[state]),
      value: statement,
      remark: remedy,
      key: state,
    })),
    ...content.lookAlikes.map(({ label, verdict, statement }) => ({
      section: 'look-alike',
      item: label,
      value: tell(VERDICTS[verdict]),
      remark: statement,
      key: verdict,
    })),
    ...content.cautions.map(({ statement, source: number }) => ({
      section: 'caution',
      item: '',
      value: statement,
      remark: source(number),
    })),
    ...readings.flatMap(({ what, label, typed, quantity, at, doubt = '', earlier }) => [
      ...earlier.map((before) => ({
        section: 'earlier reading',
        item: label,
        typed: before.typed,
        time: before.at,
        key: what,
      })),
      { section: 'reading', item: label, typed, quantity, time: at, remark: doubt, key: what },
    ]),
    ...content.measures.map(({ what, label, quantity }) => ({ section: 'derived', item: label, quantity, key: what })),
    ...moves.map(({ at, direction, typed, quantity, how, cylinder, refrigerant }) => ({
      section: 'refrigerant',
      item: tell(DIRECTIONS[direction]),
      typed,
      quantity,
      time: at,
      remark: tell(say`${verbatim(how)}; cylinder ${verbatim(cylinder)}; ${verbatim(refrigerant)}`),
      key: direction,
    })),
    ...content.cylinders.flatMap(({ cylinder, refrigerant, gave, took }) => [
      {
        section: 'cylinder',
        item: cylinder,
        quantity: gave,
        remark: tell(say`gave, ${verbatim(refrigerant)}`),
        key: 'gave',
      },
      {
        section: 'cylinder',
        item: cylinder,
        quantity: took,
        remark: tell(say`took, ${verbatim(refrigerant)}`),
        key: 'took',
      },
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
    ...content.problems.map((value) => ({ section: 'problem', item: tell(say`not used`), value })),
    ...content.doubts.map((value) => ({ section: 'doubt', item: tell(say`used, and questioned`), value })),
  ]
}

function cell(text: string): string {
  const plain = /^[=@\t\r]|^[+-](?![\d.,\s])/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain
}
