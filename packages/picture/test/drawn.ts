import { textWidth } from '../src/text-width.ts'

/** A line of text as it stands on the sheet, by the room that is reckoned for it. */
export interface DrawnText {
  readonly words: string
  readonly left: number
  readonly right: number
  readonly baseline: number
}

/** Every label of a picture. */
export function textsOf(svg: string): readonly DrawnText[] {
  const size = Number(/font-size="([\d.]+)"/.exec(svg)?.[1])
  return [...svg.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].map(([, attributes = '', escaped = '']) => {
    const words = escaped.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    const number = (name: string) => Number(new RegExp(` ${name}="([-\\d.]+)"`).exec(attributes)?.[1])
    const anchor = /text-anchor="(\w+)"/.exec(attributes)?.[1] ?? 'start'
    const width = textWidth(words, size)
    const left = number('x') - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0)
    return { words, left, right: left + width, baseline: number('y') }
  })
}

/** The names of elements that were opened and not closed in order; empty for a well-formed drawing. */
export function unclosed(svg: string): readonly string[] {
  const open: string[] = []
  for (const [, closing, name = '', alone] of svg.matchAll(/<(\/?)([a-z]+)[^<>]*?(\/?)>/gi)) {
    if (closing) {
      if (open.pop() !== name) return [...open, `unexpected ${name}`]
    } else if (!alone) open.push(name)
  }
  return open
}
