/** English texts and what they are called in another language; English itself needs none. */
export type Catalogue = Readonly<Record<string, string>>

/**
 * The entry of an English text. What has none (what a person typed, a unit, a name) comes back as it is. A text that
 * begins a sentence finds the entry of the same text in the middle of one.
 */
export function lookUp(catalogue: Catalogue, english: string): string {
  if (Object.hasOwn(catalogue, english)) return catalogue[english]!
  const inside = english.charAt(0).toLowerCase() + english.slice(1)
  if (!Object.hasOwn(catalogue, inside)) return english
  return catalogue[inside]!.charAt(0).toUpperCase() + catalogue[inside]!.slice(1)
}
