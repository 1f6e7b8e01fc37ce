import { inEnglish, type Words } from '@chargewright/quantity'

/** The language that a record is written in. */
export interface Language {
  /** BCP 47, such as `es`. */
  readonly tag: string
  readonly words: Words
}

export const ENGLISH: Language = { tag: 'en', words: inEnglish }
