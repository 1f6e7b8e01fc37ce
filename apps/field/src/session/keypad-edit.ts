/** A text and the part of it that is marked, as a field holds them. */
export interface Marked {
  readonly text: string
  readonly start: number
  readonly end: number
}

/** Puts a character of the keypad in the place of what is marked; a second decimal point in one number is not taken. */
export function pressed({ text, start, end }: Marked, character: string): Marked {
  const before = text.slice(0, start)
  if (character === '.' && /[.,]\d*$/.test(before)) return { text, start, end: start }
  const gap = /[a-z°%"']$/i.test(before) ? ' ' : ''
  const at = before.length + gap.length + character.length
  return { text: `${before}${gap}${character}${text.slice(end)}`, start: at, end: at }
}

/** Takes back what is marked, else the character before the cursor; a unit goes as a whole, with the gap before it. */
export function erased({ text, start, end }: Marked): Marked {
  const before = text.slice(0, start)
  const kept = start === end ? before.replace(/(\s*[^\d\s.,+−–-][^\d.,]*|.)$/, '') : before
  return { text: kept + text.slice(end), start: kept.length, end: kept.length }
}
