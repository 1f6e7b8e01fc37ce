import type { VisitEvent } from '@chargewright/visit'
import { eventInWords } from '../session/event-in-words.ts'
import { isUndo } from '../session/undo.ts'

interface Props {
  readonly events: readonly VisitEvent[]
  readonly bringBack: (undoId: string) => void
}

/** What the last undo took back, and the way to bring it back; gone with the next entry. */
export function UndoneNotice({ events, bringBack }: Props) {
  const last = events.at(-1)
  const undone = last && isUndo(last) ? events.find(({ id }) => id === last.corrects) : undefined
  return (
    <div class="undone" role="status">
      {last && undone && (
        <>
          <span>Undone: {eventInWords(undone)}</span>
          <button type="button" class="link" onClick={() => bringBack(last.id)}>
            Bring it back
          </button>
        </>
      )}
    </div>
  )
}
