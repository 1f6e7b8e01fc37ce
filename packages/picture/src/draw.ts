import type { Picture, PictureTable, Sheet } from './picture.ts'
import { element, escapeXml } from './svg.ts'
import { TYPE } from './tokens.ts'

/** The finished picture: the parts on their sheet, with its words beside it. */
export function draw(
  sheet: Sheet,
  words: { readonly title: string; readonly description: string; readonly table: PictureTable },
  ...parts: readonly string[]
): Picture {
  const { width, height, text } = sheet
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'font-family': TYPE,
      'font-size': text,
    },
    element('title', {}, escapeXml(words.title)),
    element('desc', {}, escapeXml(words.description)),
    ...parts,
  )
  return { svg, ...words }
}
