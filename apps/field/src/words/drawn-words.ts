import { t } from './t.ts'

/** A drawing with its words in the language of the page. The words are escaped in it already, and no entry needs it. */
export function drawnWords(svg: string): string {
  return svg.replace(/>([^<>]+)</g, (_, words: string) => `>${figureWords(words)}<`)
}

/**
 * What names a figure of a drawing: a text with a number before it or a unit behind it, `2 Suction line`, `45° suction`,
 * `time, s`.
 */
export function figureWords(words: string): string {
  const [, number = '', name = words] = /^([−-]?\d+°? )?(.*)$/s.exec(words) ?? []
  if (t(name) !== name) return number + t(name)
  const unit = name.lastIndexOf(', ')
  return unit < 0 ? words : number + t(name.slice(0, unit)) + name.slice(unit)
}
