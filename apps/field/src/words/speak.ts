import { signal } from '@preact/signals'
import { CATALOGUES, type Language } from './language.ts'
import { catalogue } from './t.ts'

/** The language that the page is in now: what is drawn and written elsewhere for it follows. */
export const spoken = signal<Language>('en')

/** The language that is wanted now: a catalogue that arrives after another choice is not put up. */
let wanted: Language = 'en'

/** Puts the page into a language. A catalogue that cannot be had (the first load broke off) leaves the page as it is. */
export async function speak(language: Language, page: Pick<HTMLElement, 'lang'>): Promise<void> {
  wanted = language
  try {
    const words = await CATALOGUES[language]()
    if (wanted !== language) return
    catalogue.value = words
    spoken.value = language
    page.lang = language
  } catch {
    // Every text of the page is still there, in the language before.
  }
}
