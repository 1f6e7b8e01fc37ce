import { logLineId } from './reveal.ts'

/** Folds a line of the log after it was corrected, and goes to it; who has gone elsewhere meanwhile stays there. */
export function foldLine(position: number): void {
  const line = document.getElementById(logLineId(position))
  const fold = line?.closest('details')
  if (!line || !fold) return
  const isHere = fold.contains(document.activeElement) || document.activeElement === document.body
  fold.open = false
  if (!isHere) return
  line.scrollIntoView({ block: 'center' })
  line.focus({ preventScroll: true })
}
