import type { KEPT } from './breaks-before.ts'

/** The part of pdfmake's document language that a record uses: plain data, so that a definition can be compared. */
export type PdfNode =
  | string
  | ({ readonly text: string | readonly PdfText[] } & PdfStyle)
  /** Kept on one page only where it is sure to fit on one: the writer drops what does not. */
  | ({ readonly stack: readonly PdfNode[]; readonly unbreakable?: boolean } & PdfStyle)
  | ({ readonly columns: readonly PdfNode[]; readonly columnGap?: number } & PdfStyle)
  | ({ readonly table: PdfTable; readonly layout: 'ruled' | 'titled' } & PdfStyle)
  | ({ readonly svg: string; readonly width: number } & PdfStyle)
  | ({ readonly canvas: readonly PdfLine[] } & PdfStyle)

export type PdfText = string | ({ readonly text: string } & PdfStyle)

export interface PdfTable {
  readonly headerRows: number
  readonly keepWithHeaderRows: 2
  readonly dontBreakRows: true
  readonly widths: readonly (number | 'auto' | '*')[]
  readonly body: readonly (readonly PdfNode[])[]
}

interface PdfLine {
  readonly type: 'line'
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  readonly lineWidth: number
  readonly lineColor: string
}

interface PdfStyle {
  readonly fontSize?: number
  /** Of what does not stand alone on a page. */
  readonly headlineLevel?: (typeof KEPT)[keyof typeof KEPT]
  readonly bold?: boolean
  readonly color?: string
  readonly alignment?: 'left' | 'right'
  readonly lineHeight?: number
  /** Of a table's cell. */
  readonly colSpan?: number
  /** Left, top, right, bottom. */
  readonly margin?: readonly [number, number, number, number]
  readonly width?: number | 'auto' | '*'
}

/** A whole record, ready for `renderPdf`. */
export interface PdfDefinition {
  readonly pageSize: 'A4' | 'LETTER'
  readonly pageMargins: readonly [number, number, number, number]
  readonly info: { readonly title: string; readonly subject: string; readonly creator: string }
  /** ISO 8601; the only date that the file carries. */
  readonly created: string
  /** BCP 47, for those who have the file read to them. */
  readonly language: string
  /** At the foot of every page, before its number. */
  readonly foot: string
  /** How a page is numbered among all: `{0} of {1}`. */
  readonly pageOfPages: string
  readonly content: readonly PdfNode[]
}
