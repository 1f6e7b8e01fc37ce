import { format } from './format.ts'
import type { UnitPreference } from './preference.ts'
import type { Quantity } from './quantity.ts'
import type { Words } from './translate.ts'

/**
 * A sentence with quantities in it, not yet in anyone's units. The template, with `{0}` where the values go, is also
 * the key under which a translation finds it.
 */
export interface Statement {
  readonly template: string
  readonly values: readonly (Quantity | Statement | Verbatim | string | number)[]
}

/** A text that reads the same in every language: what a person typed, a name, a text that is translated already. */
export interface Verbatim {
  readonly verbatim: string
}

export const verbatim = (text: string): Verbatim => ({ verbatim: text })

/** Tagged template: say`Superheat ${superheat} is above ${limit}`. */
export function say(strings: TemplateStringsArray, ...values: Statement['values']): Statement {
  return { template: strings.reduce((text, part, i) => `${text}{${i - 1}}${part}`), values }
}

/** The sentence in the reader's units, and these in the reader's words; a quantity with an uncertainty is shown with it. */
export function render(statement: Statement, preference: UnitPreference, words?: Words): string {
  return statement.template.replace(/\{(\d+)\}/g, (_, index: string) => {
    const value = statement.values[Number(index)]
    if (typeof value !== 'object') return String(value)
    if ('verbatim' in value) return value.verbatim
    return 'template' in value
      ? render(value, preference, words)
      : format(value, preference, value.u !== undefined, words)
  })
}
