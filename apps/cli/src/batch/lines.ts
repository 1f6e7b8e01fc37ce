/** One line of a stream, numbered from 1 as an editor does, or the reason why it has no text. */
export type Line =
  | { readonly number: number; readonly text: string }
  | { readonly number: number; readonly unreadable: { readonly value: string; readonly accepted: string } }

/** Above the longest visit file that makes sense, and small enough to hold. */
const LONGEST_LINE_BYTES = 64 * 1024 * 1024

const NEWLINE = 0x0a

/**
 * The lines of a byte stream, handed on as soon as the chunk that completes them has come: those of one chunk together,
 * so that they can be answered with one write. A last line without a line break counts too; a carriage
 * return before the line break belongs to it.
 *
 * A line that is too long, or that is not UTF-8, becomes an `unreadable` one and the next line is read as usual.
 */
export async function* linesOf(
  chunks: AsyncIterable<Uint8Array>,
  longest = LONGEST_LINE_BYTES,
): AsyncGenerator<Line[]> {
  let number = 0
  let parts: Uint8Array[] = []
  let length = 0

  const keep = (part: Uint8Array) => {
    length += part.length
    if (length > longest) parts = []
    else parts.push(part)
  }
  const complete = (): Line => {
    number += 1
    const line = length > longest ? tooLong(number, length, longest) : decode(number, parts)
    parts = []
    length = 0
    return line
  }

  for await (const chunk of chunks) {
    const lines: Line[] = []
    let start = 0
    for (let end = chunk.indexOf(NEWLINE); end >= 0; end = chunk.indexOf(NEWLINE, start)) {
      keep(chunk.subarray(start, end))
      lines.push(complete())
      start = end + 1
    }
    if (start < chunk.length) keep(chunk.subarray(start))
    if (lines.length > 0) yield lines
  }
  if (length > 0) yield [complete()]
}

const utf8 = new TextDecoder('utf-8', { fatal: true })

function decode(number: number, parts: readonly Uint8Array[]): Line {
  try {
    const text = utf8.decode(parts.length === 1 ? parts[0] : Buffer.concat(parts))
    return { number, text: text.endsWith('\r') ? text.slice(0, -1) : text }
  } catch {
    return { number, unreadable: { value: 'bytes that are no text', accepted: 'UTF-8' } }
  }
}

const tooLong = (number: number, length: number, longest: number): Line => ({
  number,
  unreadable: { value: `${length} bytes`, accepted: `at most ${longest} bytes in a line` },
})
