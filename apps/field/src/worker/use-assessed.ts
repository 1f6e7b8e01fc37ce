import { useRef } from 'preact/hooks'
import { useKeptParts } from '../parts/use-kept-parts.ts'
import type { Assessed, VisitEvents } from './protocol.ts'
import { type Asking, useAnswer } from './use-answer.ts'

/**
 * The answer to a visit. It is asked for while an entry is still on its way to the disk, and shown once it is there.
 *
 * @param ahead the visit with that entry
 */
export function useAssessed(visit: VisitEvents, ahead: VisitEvents | undefined): Asking<Assessed> {
  const asking = useAnswer('assess', useKeptParts(ahead ?? visit))
  const answer = useKeptParts(asking.answer)
  const shown = useRef<Asking<Assessed>>(asking)
  if (!ahead) shown.current = { ...asking, answer }
  return shown.current
}
