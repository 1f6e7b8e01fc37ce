import { type Catalogue, lookUp, type Words } from '@chargewright/quantity'

/** The languages of the app by their tags (BCP 47), each by its own name. */
export const LANGUAGES = { en: 'English', es: 'Español' } as const
export type Language = keyof typeof LANGUAGES

/** Loads a catalogue, which is a part of its own. */
export const CATALOGUES: Readonly<Record<Language, () => Promise<Catalogue>>> = {
  en: async () => ({}),
  es: async () => (await import('./es/spanish.ts')).SPANISH,
}

/** What a package is handed to write in a language. */
export async function wordsOf(language: Language): Promise<Words> {
  const catalogue = await CATALOGUES[language]()
  return (english) => lookUp(catalogue, english)
}
