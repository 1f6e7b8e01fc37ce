import { type Catalogue, catalogue } from './t.ts'

export const LANGUAGES = { en: 'English', es: 'Español' } as const
export type Language = keyof typeof LANGUAGES

/** The language that is wanted now: a catalogue that arrives after another choice is not put up. */
let wanted: Language = 'en'

/** Puts the page into a language. A catalogue that cannot be had (the first load broke off) leaves the page as it is. */
export async function speak(language: Language, page: Pick<HTMLElement, 'lang'>): Promise<void> {
  wanted = language
  try {
    const words = await CATALOGUES[language]()
    if (wanted !== language) return
    catalogue.value = words
    page.lang = language
  } catch {
    // Every text of the page is still there, in the language before.
  }
}

const CATALOGUES: Readonly<Record<Language, () => Promise<Catalogue>>> = {
  en: async () => ({}),
  es: async () => (await import('./es/spanish.ts')).SPANISH,
}
