import type { RecordContent } from '../content/record-content.ts'
import { clockOf } from '../content/time-in-words.ts'
import { inHalves } from './in-halves.ts'
import type { PdfNode } from './node.ts'
import { shortened } from './printable.ts'
import { CARE, cited, paragraph, SIZE, SOFT, section, table, titledTable } from './style.ts'

/** Earlier readings of a kind that are printed; the data exports have all. */
const MOST_EARLIER = 4
/** Readings as typed and as converted, numbered as the stations are. */
export const readingsPart = ({ readings }: RecordContent): readonly PdfNode[] =>
  titledTable(
    'Readings, in walking order',
    [14, '*', 92, 92, 62, 44, 18],
    ['', 'reading', 'as typed', 'read as', 'converted', 'time', ''],
    readings.map(({ station, label, typed, quantity, at, source, earlier, corrected, doubt }) => [
      paragraph(String(station), { bold: true }),
      {
        stack: [
          paragraph(label),
          ...(corrected ? [remark('corrected, see below')] : []),
          ...(doubt === undefined ? [] : [remark(`questioned: ${doubt}`)]),
          ...(earlier.length === 0 ? [] : [paragraph(`before: ${before(earlier)}`, { size: SIZE.small, color: SOFT })]),
        ],
      },
      shortened(typed, 60),
      paragraph(quantity.shown, { bold: true }),
      quantity.other,
      clockOf(at),
      paragraph(`[${source}]`, { size: SIZE.small, color: SOFT }),
    ]),
  )

const remark = (text: string) => paragraph(text, { size: SIZE.small, color: CARE })

function before(earlier: RecordContent['readings'][number]['earlier']): string {
  const last = earlier.slice(-MOST_EARLIER).map(({ typed, at }) => `${shortened(typed, 30)} at ${clockOf(at)}`)
  return (earlier.length > MOST_EARLIER ? ['…', ...last] : last).join(', ')
}

/** Derived values, in two tables side by side so that they take half the height. */
export function measuresPart({ measures }: RecordContent, gap: number): readonly PdfNode[] {
  const half = Math.ceil(measures.length / 2)
  const [left, right] = [measures.slice(0, half), measures.slice(half)].map((rows) =>
    table(
      ['*', 88, 62],
      ['', 'value', 'converted'],
      rows.map(({ label, quantity }) => [label, paragraph(quantity.shown, { bold: true }), quantity.other]),
    ),
  ) as [readonly PdfNode[], readonly PdfNode[]]
  const nodes = left.length === 0 ? [] : inHalves([...left, ...right], gap)
  // A dozen lines at most, so it is sure to fit on one page with its heading.
  return nodes.length === 0 ? [] : [{ stack: section('Derived from them', nodes), unbreakable: true }]
}

/** What had to hold before the method may speak, and what else could make the same readings. */
export const conditionsPart = ({ conditions, lookAlikes }: RecordContent): readonly PdfNode[] => [
  ...titledTable(
    'Conditions of the method',
    [48, '*'],
    [],
    conditions.map(({ state, statement, source, remedy }) => [
      paragraph(state, { bold: true, ...(state === 'met' ? {} : { color: CARE }) }),
      {
        stack: [paragraph(cited(statement, source)), ...(remedy === undefined ? [] : [remark(remedy)])],
      },
    ]),
  ),
  ...titledTable(
    'What else could look like this',
    [48, '*'],
    [],
    lookAlikes.map(({ verdict, label, statement }) => [
      paragraph(verdict, { bold: true, ...(verdict === 'excluded' ? {} : { color: CARE }) }),
      { stack: [paragraph(label), paragraph(statement, { size: SIZE.small, color: SOFT })] },
    ]),
  ),
]

/** Every weighed move, and what each cylinder gave and took. */
export const weightsPart = ({ moves, cylinders }: RecordContent): readonly PdfNode[] => [
  ...titledTable(
    'Refrigerant weighed',
    [44, 22, 70, 84, '*', 90, 80],
    ['time', '', 'as typed', 'read as', 'how', 'cylinder', 'net in the system'],
    moves.map(({ at, direction, typed, quantity, how, refrigerant, cylinder, net }) => [
      clockOf(at),
      paragraph(direction, { bold: true }),
      shortened(typed, 40),
      paragraph(quantity.shown, { bold: true }),
      how,
      `${shortened(cylinder, 40)} (${shortened(refrigerant, 24)})`,
      net.shown,
    ]),
  ),
  ...titledTable(
    'Cylinders in this visit',
    ['*', 110, 90, 90],
    ['cylinder', 'refrigerant', 'gave', 'took'],
    cylinders.map(({ cylinder, refrigerant, gave, took }) => [
      shortened(cylinder, 60),
      shortened(refrigerant, 40),
      gave.shown,
      took.shown,
    ]),
  ),
]
