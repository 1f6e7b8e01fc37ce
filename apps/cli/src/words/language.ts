import { type Catalogue, inEnglish, lookUp, type Words } from '@chargewright/quantity'

/** The languages of sentences by their tags (BCP 47). */
export const LANGUAGES = ['en', 'es'] as const
export type Language = (typeof LANGUAGES)[number]

/** The words of a language; those of another than English are loaded at the first call. */
export async function wordsOf(language: Language): Promise<Words> {
  if (language === 'en') return inEnglish
  const { SPANISH } = await import('./spanish.ts')
  const catalogue: Catalogue = SPANISH
  return (english) => lookUp(catalogue, english)
}
