import { sourceInWords, type Words } from '@chargewright/quantity'

/** Numbers sources as they come up, so that each is printed once, at the end. */
export interface Citations {
  /** The number of a source. */
  readonly cite: (source: string) => number
  /** In the language of the record, in the order of their numbers. */
  readonly sources: () => readonly string[]
}

export function citations(words: Words): Citations {
  const sources: string[] = []
  const cite = (source: string) => {
    if (!sources.includes(source)) sources.push(source)
    return sources.indexOf(source) + 1
  }
  return { cite, sources: () => sources.map((source) => sourceInWords(source, words)) }
}
