import type { VisitEvent } from '@chargewright/visit'
import { eventInWords } from '../session/event-in-words.ts'
import { nextRedo } from '../session/undo.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly events: readonly VisitEvent[]
  readonly redo: () => void
}

/** What the last undo took back, and the way to bring it back, one after the other; gone with the next entry. */
export function UndoneNotice({ events, redo }: Props) {
  const undone = nextRedo(events)
  return (
    <div class="undone" role="status">
      {undone && (
        <>
          <span>{t('Undone: {0}', eventInWords(undone.act))}</span>
          <button type="button" class="link" onClick={redo}>
            {t('Bring it back')}
          </button>
        </>
      )}
    </div>
  )
}
