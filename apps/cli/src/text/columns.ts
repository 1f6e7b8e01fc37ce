export type Align = 'left' | 'right'

/** Rows of cells as aligned lines; a column with no alignment named is set left. Trailing space is cut. */
export function columns(rows: readonly (readonly string[])[], align: readonly Align[], gap = 2): readonly string[] {
  const widths = rows.reduce<number[]>((widest, row) => {
    row.forEach((cell, i) => {
      widest[i] = Math.max(widest[i] ?? 0, widthOf(cell))
    })
    return widest
  }, [])
  return rows.map((row) =>
    row
      .map((cell, i) => {
        const space = ' '.repeat(widths[i]! - widthOf(cell))
        return align[i] === 'right' ? space + cell : cell + space
      })
      .join(' '.repeat(gap))
      .trimEnd(),
  )
}

/** Characters, not code units. */
export const widthOf = (text: string) => [...text].length
