import type { PdfNode } from './node.ts'

/** Short lines side by side, down the left column first. */
export function inHalves(lines: readonly PdfNode[], gap: number): readonly PdfNode[] {
  if (lines.length < 2) return lines
  const half = Math.ceil(lines.length / 2)
  return [
    {
      columns: [
        { width: '*', stack: lines.slice(0, half) },
        { width: '*', stack: lines.slice(half) },
      ],
      columnGap: gap,
    },
  ]
}
