/** What a number is typed with. */
const NUMERAL = /[\d.,/¼½¾⅛⅜⅝⅞]/
const SIGN = /^\s*([-−–]?)\s*/

/**
 * The text after a unit key was pressed: the unit is put behind the last number, in the place of a unit that stands
 * there already. So `14` `lb` `6` `oz` can be entered on a keypad that has digits only. Without a number the unit alone
 * stands there, for the number that comes.
 */
export function withUnit(text: string, unit: string): string {
  const upToLastNumber = /^.*[\d.,/¼½¾⅛⅜⅝⅞]/s.exec(text)?.[0]
  return upToLastNumber === undefined ? `${SIGN.exec(text)?.[1] ?? ''} ${unit}` : `${upToLastNumber} ${unit} `
}

/** The text with its sign turned. */
export function turnSign(text: string): string {
  if (hasNoNumber(text)) return SIGN.exec(text)?.[1] ? text.replace(/[-−–]/, '') : `-${text}`
  return /^\s*[-−–]/.test(text) ? text.replace(/^\s*[-−–]\s*/, '') : `-${text.trimStart()}`
}

/** Where the next digit goes: at the end, but before a unit that stands alone. */
export function placeToType(text: string): number {
  return hasNoNumber(text) ? (SIGN.exec(text)?.[1]?.length ?? 0) : text.length
}

const hasNoNumber = (text: string): boolean => !NUMERAL.test(text)
