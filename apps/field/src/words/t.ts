import { signal } from '@preact/signals'

/** English texts and what they are called in the language of the page; English itself needs none. */
export type Catalogue = Readonly<Record<string, string>>

/** The catalogue that is on the page now. Whatever is drawn with `t` is drawn anew when it changes. */
export const catalogue = signal<Catalogue>({})

/**
 * A text of the app, or a label of a package, in the language of the page: `t('All systems')`, `t('{0} visits', 3)`.
 * The English text is the key. What has no entry (what a person typed, a unit, a name) comes back as it is. A text that
 * begins a sentence finds the entry of the same text in the middle of one.
 */
export function t(english: string, ...values: readonly (string | number)[]): string {
  const text = entryOf(english)
  if (values.length === 0) return text
  return text.replace(/\{(\d+)\}/g, (_, place: string) => String(values[Number(place)]))
}

function entryOf(english: string): string {
  const words = catalogue.value
  if (Object.hasOwn(words, english)) return words[english]!
  const inside = english.charAt(0).toLowerCase() + english.slice(1)
  if (!Object.hasOwn(words, inside)) return english
  return words[inside]!.charAt(0).toUpperCase() + words[inside]!.slice(1)
}
