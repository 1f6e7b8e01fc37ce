/**
 * The text after a unit key was pressed: the unit is put behind the last number, in the place of a unit that stands
 * there already. So `14` `lb` `6` `oz` can be entered on a keypad that has digits only.
 */
export function withUnit(text: string, unit: string): string {
  const upToLastNumber = /^.*[\d.,/¼½¾⅛⅜⅝⅞]/s.exec(text)?.[0]
  return upToLastNumber === undefined ? text : `${upToLastNumber} ${unit} `
}

/** The text with its sign turned. */
export function turnSign(text: string): string {
  return /^\s*[-−–]/.test(text) ? text.replace(/^\s*[-−–]\s*/, '') : `-${text.trimStart()}`
}
