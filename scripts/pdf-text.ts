import { inflateSync } from 'node:zlib'

/** Letters in a row as a page shows them, in points from its lower left corner. */
export interface PdfWord {
  readonly text: string
  readonly size: number
  readonly x: number
  readonly y: number
}

/** What a PDF says, as a reader of the file finds it: the letters of every page, through the maps of its own fonts. */
export const pdfText = (bytes: Uint8Array): readonly string[] =>
  pdfWords(bytes).map((words) => words.map(({ text }) => `${text}\n`).join(''))

/** The same with where it stands, page by page. */
export function pdfWords(bytes: Uint8Array): readonly (readonly PdfWord[])[] {
  const objects = objectsOf(bytes)
  const fonts = fontMaps(objects)
  return [...objects.values()]
    .filter(({ head }) => /\/Type \/Page\b/.test(head))
    .map(({ head }) => {
      const content = objects.get(Number(/\/Contents (\d+) 0 R/.exec(head)![1]))!
      return shownWords(content.stream, fonts)
    })
}

/** Number of pages, as the file declares them. */
export const pageCount = (bytes: Uint8Array): number =>
  [...objectsOf(bytes).values()].filter(({ head }) => /\/Type \/Page\b/.test(head)).length

interface PdfObject {
  readonly head: string
  readonly stream: string
}

function objectsOf(bytes: Uint8Array): ReadonlyMap<number, PdfObject> {
  const file = Buffer.from(bytes).toString('latin1')
  const objects = new Map<number, PdfObject>()
  for (const [, number, body = ''] of file.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const [head = '', rest] = body.split(/\nstream\n/)
    const raw =
      rest === undefined
        ? Buffer.alloc(0)
        : Buffer.from(body.slice(head.length + 8).replace(/\nendstream$/, ''), 'latin1')
    const stream = /FlateDecode/.test(head) ? inflateSync(raw) : raw
    objects.set(Number(number), { head, stream: stream.toString('latin1') })
  }
  return objects
}

/** By the name under which a page knows the font: from glyph number to letters. */
function fontMaps(objects: ReadonlyMap<number, PdfObject>): ReadonlyMap<string, ReadonlyMap<number, string>> {
  const maps = new Map<string, ReadonlyMap<number, string>>()
  for (const { head } of objects.values()) {
    for (const [, name = '', number] of head.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const font = objects.get(Number(number))
      const map = /\/ToUnicode (\d+) 0 R/.exec(font?.head ?? '')?.[1]
      if (map) maps.set(name, toUnicode(objects.get(Number(map))!.stream))
    }
  }
  return maps
}

function toUnicode(cmap: string): ReadonlyMap<number, string> {
  const letters = new Map<number, string>()
  for (const [, first = '', list = ''] of cmap.matchAll(/<([0-9a-f]+)> <[0-9a-f]+> \[([^\]]*)\]/gi)) {
    const codes = [...list.matchAll(/<([0-9a-f ]*)>/gi)].map(([, hex = '']) => hex.replaceAll(' ', ''))
    codes.forEach((hex, i) => {
      const units = hex.match(/.{4}/g) ?? []
      letters.set(
        Number.parseInt(first, 16) + i,
        String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16))),
      )
    })
  }
  return letters
}

const SHOWN =
  /[\d.-]+ [\d.-]+ [\d.-]+ [\d.-]+ ([\d.-]+) ([\d.-]+) Tm|\/(F\d+) ([\d.]+) Tf|\[([^\]]*)\] TJ|<([0-9a-f]*)> Tj/gi

function shownWords(content: string, fonts: ReadonlyMap<string, ReadonlyMap<number, string>>): readonly PdfWord[] {
  let letters: ReadonlyMap<number, string> = new Map()
  let [x, y, size] = [0, 0, 0]
  const words: PdfWord[] = []
  for (const [, left, up, font, points, array, string] of content.matchAll(SHOWN)) {
    if (left) [x, y] = [Number(left), Number(up)]
    else if (font) {
      letters = fonts.get(font) ?? new Map()
      size = Number(points)
    } else {
      const hex = string ?? [...(array ?? '').matchAll(/<([0-9a-f]*)>/gi)].map(([, part = '']) => part).join('')
      const glyphs = hex.match(/.{4}/g) ?? []
      const text = glyphs.map((glyph) => letters.get(Number.parseInt(glyph, 16)) ?? '\ufffd').join('')
      words.push({ text, size, x, y })
    }
  }
  return words
}
