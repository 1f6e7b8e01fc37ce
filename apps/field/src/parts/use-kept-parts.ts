import { useRef } from 'preact/hooks'
import { withPartsOf } from '../session/with-parts-of.ts'

/** Data that is computed anew at every drawing, as the objects of the last drawing wherever it says the same. */
export function useKeptParts<T>(now: T): T {
  const last = useRef(now)
  last.current = withPartsOf(last.current, now)
  return last.current
}
