import { say, type Tell, verbatim } from '@chargewright/quantity'
import { DIRECTIONS, STATES, VERDICTS } from '../content/code-in-words.ts'
import type { RecordContent } from '../content/record-content.ts'
import { clockOf } from '../content/time-in-words.ts'
import { KEPT } from './breaks-before.ts'
import { inHalves } from './in-halves.ts'
import type { PdfNode } from './node.ts'
import { shortened } from './printable.ts'
import { CARE, cited, paragraph, SIZE, SOFT, section, table, titledTable } from './style.ts'

/** Earlier readings of a kind that are printed; the data exports have all. */
const MOST_EARLIER = 4
/** Readings as typed and as converted, numbered as the stations are. */
export const readingsPart = ({ readings, visit }: RecordContent, tell: Tell): readonly PdfNode[] =>
  titledTable(
    tell(say`Readings, in walking order`),
    [14, '*', 92, 92, 62, 44, 18],
    [say``, say`reading`, say`as typed`, say`read as`, say`converted`, say`time`, say``].map(tell),
    readings.map(({ station, label, typed, quantity, at, source, earlier, corrected, doubt }) => [
      paragraph(String(station), { bold: true }),
      {
        stack: [
          paragraph(label),
          ...(corrected ? [remark(tell(say`corrected, see below`))] : []),
          ...(doubt === undefined ? [] : [remark(tell(say`questioned: ${verbatim(doubt)}`))]),
          ...(earlier.length === 0
            ? []
            : [
                paragraph(tell(say`before: ${verbatim(before(earlier, visit.offset, tell))}`), {
                  size: SIZE.small,
                  color: SOFT,
                }),
              ]),
        ],
      },
      shortened(typed, tell, 60),
      paragraph(quantity.shown, { bold: true }),
      quantity.other,
      clockOf(at, visit.offset),
      paragraph(`[${source}]`, { size: SIZE.small, color: SOFT }),
    ]),
  )

const remark = (text: string) => paragraph(text, { size: SIZE.small, color: CARE })

function before(earlier: RecordContent['readings'][number]['earlier'], offset: string | undefined, tell: Tell): string {
  const last = earlier
    .slice(-MOST_EARLIER)
    .map(({ typed, at }) => tell(say`${verbatim(shortened(typed, tell, 30))} at ${verbatim(clockOf(at, offset))}`))
  return (earlier.length > MOST_EARLIER ? ['…', ...last] : last).join(', ')
}

/** Derived values, in two tables side by side so that they take half the height. */
export function measuresPart({ measures }: RecordContent, gap: number, tell: Tell): readonly PdfNode[] {
  const half = Math.ceil(measures.length / 2)
  const [left, right] = [measures.slice(0, half), measures.slice(half)].map((rows) =>
    table(
      ['*', 88, 62],
      [say``, say`value`, say`converted`].map(tell),
      rows.map(({ label, quantity }) => [label, paragraph(quantity.shown, { bold: true }), quantity.other]),
    ),
  ) as [readonly PdfNode[], readonly PdfNode[]]
  const nodes = left.length === 0 ? [] : inHalves([...left, ...right], gap)
  // A dozen lines at most, so it is sure to fit on one page with its heading.
  return nodes.length === 0
    ? []
    : [{ stack: section(tell(say`Derived from them`), nodes), unbreakable: true, headlineLevel: KEPT.section }]
}

/** What had to hold before the method may speak, and what else could make the same readings. */
export const conditionsPart = ({ conditions, lookAlikes }: RecordContent, tell: Tell): readonly PdfNode[] => [
  ...titledTable(
    tell(say`Conditions of the method`),
    [54, '*'],
    [],
    conditions.map(({ state, statement, source, remedy }) => [
      paragraph(tell(STATES[state]), { bold: true, ...(state === 'met' ? {} : { color: CARE }) }),
      {
        stack: [paragraph(cited(statement, source)), ...(remedy === undefined ? [] : [remark(remedy)])],
      },
    ]),
  ),
  ...titledTable(
    tell(say`What else could look like this`),
    [54, '*'],
    [],
    lookAlikes.map(({ verdict, label, statement }) => [
      paragraph(tell(VERDICTS[verdict]), { bold: true, ...(verdict === 'excluded' ? {} : { color: CARE }) }),
      { stack: [paragraph(label), paragraph(statement, { size: SIZE.small, color: SOFT })] },
    ]),
  ),
]

/** Every weighed move, and what each cylinder gave and took. */
export const weightsPart = ({ moves, cylinders, visit }: RecordContent, tell: Tell): readonly PdfNode[] => [
  ...titledTable(
    tell(say`Refrigerant weighed`),
    [44, 44, 62, 80, '*', 86, 76],
    [say`time`, say``, say`as typed`, say`read as`, say`how`, say`cylinder`, say`net since the start`].map(tell),
    moves.map(({ at, direction, typed, quantity, how, refrigerant, cylinder, net }) => [
      clockOf(at, visit.offset),
      paragraph(tell(DIRECTIONS[direction]), { bold: true }),
      shortened(typed, tell, 40),
      paragraph(quantity.shown, { bold: true }),
      how,
      // Where neither is named once is enough.
      cylinder === refrigerant ? cylinder : `${shortened(cylinder, tell, 40)} (${shortened(refrigerant, tell, 24)})`,
      net.shown,
    ]),
  ),
  ...titledTable(
    tell(say`Cylinders in this visit`),
    ['*', 110, 90, 90],
    [say`cylinder`, say`refrigerant`, say`gave`, say`took`].map(tell),
    cylinders.map(({ cylinder, refrigerant, gave, took }) => [
      shortened(cylinder, tell, 60),
      shortened(refrigerant, tell, 40),
      gave.shown,
      took.shown,
    ]),
  ),
]
