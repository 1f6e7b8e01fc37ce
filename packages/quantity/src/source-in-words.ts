import { textInWords } from './made-text.ts'
import { type Statement, say } from './statement.ts'
import type { Words } from './translate.ts'

/** What a limit or a formula rests on. Titles and numbers of what is cited stay; the words of ours between them do not. */
export function sourceInWords(source: string, words: Words): string {
  return pieces(source, ['; ', ', '], words)
}

const RECALLED: Statement = say`recalled`
const MARK = ` (${RECALLED.template})`

/** The whole where it has an entry, else its pieces between the marks, the strongest mark first. */
function pieces(text: string, marks: readonly string[], words: Words): string {
  const known = textInWords(text, words)
  if (known !== text) return known
  if (text.endsWith(MARK)) return `${pieces(text.slice(0, -MARK.length), marks, words)} (${words(RECALLED.template)})`
  const [mark, ...weaker] = marks
  if (mark === undefined) return text
  return text
    .split(mark)
    .map((piece) => pieces(piece, weaker, words))
    .join(mark)
}
