import { fail, ok, type Problem, type Result } from '@chargewright/quantity'

const MAX_CHARACTERS = 200_000

/**
 * Lines and cells of a small CSV text, empty lines left out. Tab, semicolon or comma part the cells, whichever of them
 * the heading has, in this order; so that with the first two a comma can be a decimal comma.
 *
 * @param text at most 200 000 characters
 * @param field what the text is, for the problem
 */
export function readCells(text: string, field: string): Result<readonly (readonly string[])[], Problem> {
  if (text.length > MAX_CHARACTERS) {
    return fail({
      kind: 'unreadable',
      field,
      value: `${text.length} characters`,
      accepted: `at most ${MAX_CHARACTERS}`,
    })
  }
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .filter((line) => line.trim() !== '')
  const [heading] = lines
  if (heading === undefined)
    return fail({ kind: 'missing', field, value: 'nothing', accepted: 'a heading and lines under it' })
  const separator = heading.includes('\t') ? '\t' : heading.includes(';') ? ';' : ','
  return ok(
    lines.map((line) =>
      line.split(separator).map((cell) =>
        cell
          .trim()
          .replace(/^"([^"]*)"$/, '$1')
          .trim(),
      ),
    ),
  )
}
