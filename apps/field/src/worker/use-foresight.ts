import type { Fact } from '@chargewright/visit'
import { useRef } from 'preact/hooks'
import { useSteady } from '../parts/use-steady.ts'
import { useEngine } from './engine-context.ts'
import type { VisitEvents } from './protocol.ts'

/** Lets the engine begin while an entry is still being typed; of several that are asked at once only the last one counts. */
export function useForesight(visit: VisitEvents): (entry: Fact) => void {
  const engine = useEngine()
  const asker = useRef({})
  // Nothing is lost where it fails: the entry itself is asked about when it is one.
  return useSteady((entry: Fact) => void engine.ask(asker.current, 'foresee', visit, entry))
}
