import { type Statement, say } from './statement.ts'
import type { Words } from './translate.ts'

/**
 * Plain texts that were made with a name, a figure or a list of units, which read the same in every language: `equation of state
 * of R-410A`. A field of a problem and a source are plain texts; all others that hold a value are statements.
 */
const MADE: readonly Statement[] = [
  say`equation of state of ${''}`,
  say`a number with a unit: ${''}`,
  say`movement ${''}, cylinder`,
  say`class ${''} gauge`,
  say`span ${''}`,
  say`stated accuracy ${''}`,
  say`resolution ${''}`,
]

/** A plain text in another language: its own entry, else that of the text it was made from. */
export function textInWords(text: string, words: Words): string {
  const known = words(text)
  if (known !== text) return known
  for (const { template } of MADE) {
    const [before = '', after = ''] = template.split('{0}')
    if (text.startsWith(before) && text.endsWith(after) && text.length > before.length + after.length) {
      return words(template).replace('{0}', () => text.slice(before.length, text.length - after.length))
    }
  }
  return text
}
