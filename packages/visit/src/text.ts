import * as v from 'valibot'

/** A name of an event or a visit. */
export const Identifier = v.pipe(v.string(), v.nonEmpty(), v.maxLength(100))

/** One entry of a form, kept as it was typed. */
export const Typed = v.pipe(v.string(), v.nonEmpty(), v.maxLength(200))

/** One entry of a form with a word on what belongs there. */
export const typed = (description: string) => v.pipe(Typed, v.description(description))

/** Free words. */
export const Prose = v.pipe(v.string(), v.nonEmpty(), v.maxLength(10_000))
