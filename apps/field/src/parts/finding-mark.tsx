import type { FindingKind } from '@chargewright/charging'

/** Strokes on a grid of 24: plain arithmetic signs, told apart without colour. */
const STROKES: Readonly<Record<FindingKind, string>> = {
  add: 'M4 12H20M12 4V20',
  recover: 'M4 12H20',
  hold: 'M4 8.5H20M4 15.5H20',
  'not-the-charge': 'M4 8.5H20M4 15.5H20M16 3.5L8 20.5',
  'not-ready': 'M4 12H6.6M10.7 12H13.3M17.4 12H20',
  'cannot-tell': 'M7 8.2C7 2.8 17 2.8 17 8.4C17 12 12 11.6 12 15.4M12 18.4V21',
}

/** The sign of a finding, drawn. It always stands beside its word, so it says nothing to a screen reader. */
export function FindingMark({ kind }: { readonly kind: FindingKind }) {
  return (
    <svg class="finding-mark" viewBox="0 0 24 24" aria-hidden="true">
      <path d={STROKES[kind]} />
    </svg>
  )
}
