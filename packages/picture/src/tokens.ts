/** Every colour of a picture. One accent, for doubt and for what is still to go. */
export interface Palette {
  readonly paper: string
  readonly ink: string
  readonly soft: string
  readonly rule: string
  readonly wash: string
  readonly care: string
}

/** Ink on white paper, for print. */
export const PRINT: Palette = {
  paper: '#ffffff',
  ink: '#15181b',
  soft: '#454a4f',
  rule: '#cfcabd',
  wash: '#e6e2d6',
  care: '#733700',
}

/** The colours of the page that the picture stands in, from its custom properties, so that it follows its theme. */
export const PAGE: Palette = {
  paper: 'var(--paper)',
  ink: 'var(--ink)',
  soft: 'var(--soft)',
  rule: 'var(--rule)',
  wash: 'var(--wash)',
  care: 'var(--care)',
}

/** Line widths as shares of the letter height, so that a small print of a picture is the same drawing. */
export const STROKE = { grid: 0.06, thin: 0.09, line: 0.13, heavy: 0.22 } as const

export const TYPE = 'Atkinson Hyperlegible Next, system-ui, sans-serif'
