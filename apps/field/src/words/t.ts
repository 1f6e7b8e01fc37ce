import { type Catalogue, lookUp } from '@chargewright/quantity'
import { signal } from '@preact/signals'

/** The catalogue that is on the page now. Whatever is drawn with `t` is drawn anew when it changes. */
export const catalogue = signal<Catalogue>({})

/**
 * A text of the app, or a label of a package, in the language of the page: `t('All systems')`, `t('{0} visits', 3)`.
 * The English text is the key.
 */
export function t(english: string, ...values: readonly (string | number)[]): string {
  const text = lookUp(catalogue.value, english)
  if (values.length === 0) return text
  return text.replace(/\{(\d+)\}/g, (_, place: string) => String(values[Number(place)]))
}
