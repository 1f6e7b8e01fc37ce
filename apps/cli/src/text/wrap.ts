import { widthOf } from './columns.ts'

/**
 * A paragraph as lines of at most `width` characters: the first begins with `first`, the others with `rest` or as much
 * space as `first` takes. A word longer than the line stands alone and is not cut; a no-break space does not break and
 * is written as a plain one, which every terminal and every search knows.
 */
export function wrap(text: string, width: number, first = '', rest = ' '.repeat(widthOf(first))): readonly string[] {
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of text.split(/[ \n]+/).filter((word) => word !== '')) {
    if (!empty && widthOf(line) + 1 + widthOf(word) > width) {
      lines.push(line)
      line = rest
      empty = true
    }
    line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line.trimEnd()].map((each) => each.replaceAll('\u00a0', ' '))
}
