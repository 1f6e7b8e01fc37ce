import type { FindingKind } from '@chargewright/charging'
import { element } from './svg.ts'
import { type Palette, PRINT } from './tokens.ts'

/** Strokes on a grid of 24: plain arithmetic signs, told apart without colour. */
const STROKES: Readonly<Record<FindingKind, string>> = {
  add: 'M4 12H20M12 4V20',
  recover: 'M4 12H20',
  hold: 'M4 8.5H20M4 15.5H20',
  'not-the-charge': 'M4 8.5H20M4 15.5H20M16 3.5L8 20.5',
  'not-ready': 'M4 12H6.6M10.7 12H13.3M17.4 12H20',
  'cannot-tell': 'M7 8.2C7 2.8 17 2.8 17 8.4C17 12 12 11.6 12 15.4M12 18.4V21',
}

/** The sign of a finding in its ink square. It always stands beside its word, so it says nothing of its own. */
export function findingMark(kind: FindingKind, size: number, palette: Palette = PRINT): string {
  const square = element('rect', { width: 40, height: 40, fill: palette.ink })
  const sign = element('path', {
    d: STROKES[kind],
    transform: 'translate(8 8)',
    fill: 'none',
    stroke: palette.paper,
    'stroke-width': 2.2,
  })
  const sheet = { xmlns: 'http://www.w3.org/2000/svg', viewBox: '0 0 40 40', width: size, height: size }
  return element('svg', { ...sheet, 'aria-hidden': 'true' }, square, sign)
}
