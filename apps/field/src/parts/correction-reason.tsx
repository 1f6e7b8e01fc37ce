import { useId } from 'preact/hooks'
import { t } from '../words/t.ts'

interface Props {
  readonly reason: string
  readonly give: (reason: string) => void
}

const USUAL = ['typed wrong', 'misread', 'wrong place', 'wrong instrument'] as const

/** Why an entry is corrected or withdrawn, for whoever reads the record later. It may be left out. */
export function CorrectionReason({ reason, give }: Props) {
  const id = useId()
  return (
    <fieldset class="form-choices correction-reason" aria-labelledby={id}>
      <label class="form-label" id={id} for={`${id}-words`}>
        {t('Reason, for the record')}
      </label>
      <div class="choices">
        {USUAL.map((usual) => (
          <button
            key={usual}
            type="button"
            class="choice"
            aria-pressed={usual === reason}
            onClick={() => give(usual === reason ? '' : usual)}
          >
            {t(usual)}
          </button>
        ))}
      </div>
      <input
        id={`${id}-words`}
        class="form-blank"
        autoComplete="off"
        maxLength={200}
        placeholder={t('or in your own words')}
        value={reason}
        onInput={(event) => give(event.currentTarget.value)}
      />
    </fieldset>
  )
}
