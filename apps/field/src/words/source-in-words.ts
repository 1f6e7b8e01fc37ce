import { t } from './t.ts'

/** What a limit or a formula rests on. Titles and numbers of what is cited stay; the words of ours between them do not. */
export function sourceInWords(source: string): string {
  return pieces(source, ['; ', ', '])
}

const RECALLED = ' (recalled)'

/** The whole where it has an entry, else its pieces between the marks, the strongest mark first. */
function pieces(text: string, marks: readonly string[]): string {
  if (t(text) !== text) return t(text)
  if (text.endsWith(RECALLED)) return `${pieces(text.slice(0, -RECALLED.length), marks)} (${t('recalled')})`
  const [mark, ...weaker] = marks
  if (mark === undefined) return text
  return text
    .split(mark)
    .map((piece) => pieces(piece, weaker))
    .join(mark)
}
