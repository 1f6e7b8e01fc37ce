import { type CurveFactory, curveLinear, curveLinearClosed, line } from 'd3-shape'

type Attributes = Readonly<Record<string, string | number | undefined>>

/** One element as text. Numbers are rounded to a hundredth: no printer shows more, and the text stays short. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? rounded(value) : escapeXml(String(value))}"`)
    .join('')
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`
}

export const group = (attributes: Attributes, ...children: readonly string[]): string =>
  children.every((child) => child === '') ? '' : element('g', attributes, ...children)

/** Text as XML takes it: the five signs escaped, and characters that XML forbids left out. */
export function escapeXml(text: string): string {
  return text.replace(FORBIDDEN, '').replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`)
}

// Controls but tab and line ends, halves of a character (with the u flag only lone ones match), and the two that are none.
const FORBIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be left out
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\p{Cs}\ufffe\uffff]/gu

export interface Point {
  readonly x: number
  readonly y: number
}

/** The path through points, as straight pieces. */
export const pathThrough = (points: readonly Point[], closed = false): string => (closed ? CLOSED : OPEN)(points) ?? ''

const through = (curve: CurveFactory) =>
  line<Point>(
    ({ x }) => x,
    ({ y }) => y,
  )
    .curve(curve)
    .digits(2)

const OPEN = through(curveLinear)
const CLOSED = through(curveLinearClosed)

const rounded = (value: number): string => String(Math.round(value * 100) / 100 + 0)
