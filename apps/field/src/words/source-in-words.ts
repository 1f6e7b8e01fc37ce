import { t } from './t.ts'

/** What a limit or a formula rests on. Titles and numbers of what is cited stay; the words of ours between them do not. */
export function sourceInWords(source: string): string {
  const whole = t(source)
  return whole === source ? source.replaceAll(/[^,;]+/g, (part) => part.replace(part.trim(), t(part.trim()))) : whole
}
