import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { Trouble } from './trouble.tsx'

interface Props {
  readonly label: string
  readonly initial?: string
  readonly keepLabel: string
  readonly keep: (text: string) => Kept
}

/** Free words. */
export function WordsForm({ label, initial = '', keepLabel, keep }: Props) {
  const id = useId()
  const text = useSignal(initial)
  const trouble = useSignal<string | undefined>(undefined)
  const submit = async () => {
    const kept = await keep(text.value.trim())
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error, label)
    if (kept.ok) text.value = initial
  }
  return (
    <div class="form">
      <label class="form-label" for={id}>
        {t(label)}
      </label>
      <textarea
        id={id}
        rows={3}
        value={text.value}
        onInput={(event) => {
          text.value = event.currentTarget.value
          trouble.value = undefined
        }}
      />
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
      <button type="button" class="act" onClick={() => void submit()}>
        {t(keepLabel)}
      </button>
    </div>
  )
}
