import { type Palette, PRINT } from './tokens.ts'

/** A drawing, and the same said in words and figures for those who do not see it. */
export interface Picture {
  /** A whole `<svg>` element with `<title>` and `<desc>`; nothing in it needs escaping or loading. */
  readonly svg: string
  readonly title: string
  readonly description: string
  readonly table: PictureTable
}

/** The figures behind a picture, in the reader's units; the first row is the head. */
export interface PictureTable {
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/** The sheet a picture is drawn on: its size and that of its letters, in the same unit, and its colours. */
export interface Sheet {
  readonly width: number
  readonly height: number
  readonly text: number
  readonly palette: Palette
}

export const DESK: Sheet = { width: 640, height: 420, text: 15, palette: PRINT }
export const PHONE: Sheet = { width: 358, height: 320, text: 14, palette: PRINT }
