import { PRINT } from '@chargewright/picture'
import { KEPT } from './breaks-before.ts'
import type { PdfNode, PdfTable } from './node.ts'
import { printable } from './printable.ts'

/** Type sizes of a record, in points. */
export const SIZE = { name: 13, sentence: 16, heading: 9.5, body: 8.5, small: 7.4 } as const

export const { ink: INK, soft: SOFT, rule: RULE, care: CARE } = PRINT

/** What a paragraph looks like. */
interface Look {
  readonly size?: number
  readonly bold?: boolean
  readonly color?: string
  readonly margin?: readonly [number, number, number, number]
}

/** A paragraph; the only door through which text reaches the page. */
export function paragraph(text: string, { size = SIZE.body, bold = false, color = INK, margin }: Look = {}) {
  const look = { text: printable(text), fontSize: size, bold, color }
  return margin ? { ...look, margin } : look
}

/** A heading with what stands under it; nothing at all where nothing does. */
export function section(title: string, nodes: readonly PdfNode[]): readonly PdfNode[] {
  return nodes.length === 0 ? [] : [{ ...heading(title), headlineLevel: KEPT.section }, ...nodes]
}

/**
 * A ruled table under its heading, both repeated on every page it reaches; nothing where it has no rows. It may break
 * between rows: kept whole, one longer than a page would be dropped by the writer.
 */
export function titledTable(title: string, widths: PdfTable['widths'], head: readonly string[], rows: Rows) {
  const across = [{ ...heading(title), colSpan: widths.length }, ...widths.slice(1).map(() => '')]
  return ruled('titled', widths, [across, ...headOf(head)], rows)
}

/** A ruled table without a heading. */
export const table = (widths: PdfTable['widths'], head: readonly string[], rows: Rows): readonly PdfNode[] =>
  ruled('ruled', widths, headOf(head), rows)

type Rows = readonly (readonly (string | PdfNode)[])[]

export const heading = (title: string) => paragraph(title, { size: SIZE.heading, bold: true, margin: [0, 8, 0, 2] })

const headOf = (head: readonly string[]): readonly (readonly PdfNode[])[] =>
  head.length === 0 ? [] : [head.map((name) => paragraph(name, { size: SIZE.small, color: SOFT }))]

function ruled(
  layout: 'ruled' | 'titled',
  widths: PdfTable['widths'],
  heads: readonly (readonly PdfNode[])[],
  rows: Rows,
): readonly PdfNode[] {
  if (rows.length === 0) return []
  const cell = (content: string | PdfNode): PdfNode => (typeof content === 'string' ? paragraph(content) : content)
  const body = [...heads, ...rows.map((row) => row.map(cell))]
  const table = { headerRows: heads.length, keepWithHeaderRows: 2, dontBreakRows: true, widths, body } as const
  return [{ table, layout, ...(layout === 'titled' ? { headlineLevel: KEPT.section } : {}) }]
}

/** A statement with the number of its source, which does not stand alone on a line. */
export const cited = (statement: string, source: number | undefined): string =>
  source === undefined ? statement : `${statement}\u00a0[${source}]`
