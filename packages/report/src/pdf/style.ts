import { PRINT } from '@chargewright/picture'
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
  if (nodes.length === 0) return []
  return [{ ...paragraph(title, { size: SIZE.heading, bold: true, margin: [0, 8, 0, 2] }), headlineLevel: 1 }, ...nodes]
}

/** A ruled table, its head repeated on every page; nothing where it has no rows. */
export function table(
  widths: PdfTable['widths'],
  head: readonly string[],
  rows: readonly (readonly (string | PdfNode)[])[],
): readonly PdfNode[] {
  if (rows.length === 0) return []
  const cell = (content: string | PdfNode): PdfNode => (typeof content === 'string' ? paragraph(content) : content)
  const heads = head.length === 0 ? [] : [head.map((name) => paragraph(name, { size: SIZE.small, color: SOFT }))]
  const body = [...heads, ...rows.map((row) => row.map(cell))]
  return [
    {
      table: { headerRows: heads.length, keepWithHeaderRows: 1, dontBreakRows: true, widths, body },
      layout: 'ruled',
    },
  ]
}

/** A statement with the number of its source, which does not stand alone on a line. */
export const cited = (statement: string, source: number | undefined): string =>
  source === undefined ? statement : `${statement}\u00a0[${source}]`
