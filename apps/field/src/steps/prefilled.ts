import type { Blank } from './blank-form.tsx'

/** The blanks of a form with what stands in them at first: an entry to be corrected, for instance. */
export function prefilled<Blanks extends Readonly<Record<string, Blank>>>(
  blanks: Blanks,
  texts: { readonly [Name in keyof Blanks]?: string | undefined } | undefined,
): { readonly [Name in keyof Blanks]: Blank } {
  const filled = Object.entries(blanks).map(([name, blank]) => [
    name,
    { ...blank, initial: texts?.[name] ?? blank.initial },
  ])
  return Object.fromEntries(filled)
}
