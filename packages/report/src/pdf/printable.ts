import { say, type Tell, verbatim } from '@chargewright/quantity'
import regular from '../../font/AtkinsonHyperlegibleNext-Regular.json' with { type: 'json' }

const COVERED = new Set(regular.characters)
/** Stands for a character that the embedded font does not have: visible, so that nothing goes missing in silence. */
const UNKNOWN = '?'

/**
 * Text as the embedded font can print it: line ends become spaces, accents are joined to their letters, and a character
 * that the font lacks is replaced by its plain form or by a question mark; what has no place to break gets some. The data exports keep the text as typed.
 */
export function printable(text: string): string {
  const spaced = text.normalize('NFC').replace(/\s/g, (space) => (COVERED.has(space) ? space : ' '))
  const covered = Array.from(spaced, (char) => (COVERED.has(char) ? char : plain(char))).join('')
  return covered.replace(TOO_LONG, '$& ')
}

/** A run of letters that no column would hold; it is broken, so that nothing runs off the paper. */
const TOO_LONG = /\S{40}(?=\S)/g

function plain(char: string): string {
  const parts = [...char.normalize('NFKD')].filter((part) => COVERED.has(part))
  return parts.length > 0 ? parts.join('') : UNKNOWN
}

/** A text that somebody wrote, no longer than a record has room for; the data exports have the whole. */
export function shortened(text: string, tell: Tell, most = 240): string {
  const chars = [...text]
  if (chars.length <= most) return text
  return tell(say`${verbatim(chars.slice(0, most).join('').trimEnd())}… (whole text in the data export)`)
}
