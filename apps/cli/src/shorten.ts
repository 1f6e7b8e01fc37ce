const LONGEST = 60

/** Hostile input is quoted back, but not all of it. */
export const shorten = (text: string) => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text)
