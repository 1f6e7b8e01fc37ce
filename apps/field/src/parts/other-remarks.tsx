import type { OtherRemark } from '../session/remarks.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly remarks: readonly OtherRemark[]
  readonly showEntry: (eventId: string) => void
}

/** What is wrong or doubtful and has no field of its own, each with the way to its entry in the log. */
export function OtherRemarks({ remarks, showEntry }: Props) {
  return remarks.map(({ says, eventId }) => (
    <div key={says}>
      <p class="trouble">{says}</p>
      {eventId !== undefined && (
        <button type="button" class="link" onClick={() => showEntry(eventId)}>
          {t('Correct it in the log')}
        </button>
      )}
    </div>
  ))
}
