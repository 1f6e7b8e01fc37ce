import { widthOf } from './columns.ts'

/** The parts that have something to say, with a blank line between. */
export function page(...parts: readonly (readonly string[])[]): string {
  const shown = parts.filter((part) => part.length > 0)
  return `${shown.map((part) => part.join('\n')).join('\n\n')}\n`
}

/** A heading with its lines; nothing at all where there are none. */
export const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines]

/** One text at the left edge and one at the right, on one line where both fit. */
export function spread(left: string, right: string, width: number): readonly string[] {
  if (right === '') return [left]
  const space = width - widthOf(left) - widthOf(right)
  return space < 2 ? [left, right] : [left + ' '.repeat(space) + right]
}
