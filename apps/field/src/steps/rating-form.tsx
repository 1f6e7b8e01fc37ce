import { readCoefficients } from '@chargewright/compressor'
import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { Trouble } from '../parts/trouble.tsx'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly rating: string | undefined
  readonly state: (rating: string | null) => Kept
}

/** The ten coefficients of the compressor, pasted once and kept with the system. */
export function RatingForm({ rating, state }: Props) {
  const id = useId()
  const draft = useSignal<string | undefined>(undefined)
  const trouble = useSignal<string | undefined>(undefined)
  const text = draft.value ?? rating ?? ''
  const keep = async () => {
    const typed = text.trim()
    const read = typed === '' ? undefined : readCoefficients(typed)
    if (read && !read.ok) {
      trouble.value = problemInWords(read.error)
      return
    }
    const kept = await state(typed === '' ? null : typed)
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error, 'Rating of the compressor')
    if (kept.ok) draft.value = undefined
  }
  return (
    <div class="form">
      <label class="form-label" for={id}>
        {t('Coefficients')}
      </label>
      <p class="hint" id={`${id}-says`}>
        {t(
          'First line: the unit of the temperatures, then what is rated with its unit. Then C1 to C10, a line each, the range of use of suction and discharge, the return gas, and for amps the voltage and the phases.',
        )}
      </p>
      <textarea
        id={id}
        rows={8}
        spellcheck={false}
        aria-describedby={`${id}-says`}
        placeholder={SAMPLE}
        value={text}
        onInput={(event) => {
          draft.value = event.currentTarget.value
          trouble.value = undefined
        }}
      />
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
      <button type="button" class="act" onClick={() => void keep()}>
        {t('Keep the figures')}
      </button>
    </div>
  )
}

/** In the words in which a file of coefficients is read, in every language. */
const SAMPLE = '°F,power W\nC1,…\nC10,…\nsuction,30,55\ndischarge,90,140\nreturn gas superheat,20'
