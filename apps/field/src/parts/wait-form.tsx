import type { UnitPreference } from '@chargewright/quantity'
import type { FactOf } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { WAITED } from '../session/fact-in-words.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { understand } from '../session/understand.ts'
import { unitsLike } from '../session/units-like.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { Choices } from './choices.tsx'
import { EntryBlank } from './entry-blank.tsx'
import { Trouble } from './trouble.tsx'

type Wait = FactOf<'wait'>

interface Props {
  readonly initial: Partial<Wait>
  readonly units: UnitPreference
  readonly keepLabel?: string
  readonly keep: (wait: Wait) => Kept
}

const DURATION = { label: 'How long', accepts: ['duration'] } as const

/** A wait that is over. */
export function WaitForm({ initial, units: page, keepLabel = 'Enter in the log', keep }: Props) {
  const id = useId()
  const units = unitsLike(initial.duration, DURATION.accepts, page)
  const purpose = useSignal(initial.purpose ?? 'settle')
  const duration = useSignal(initial.duration ?? '')
  const trouble = useSignal<string | undefined>(undefined)
  const submit = async () => {
    const understood = understand(duration.value, DURATION, units)
    if (!understood.ok) {
      trouble.value = problemInWords(understood.error)
      return
    }
    const kept = await keep({ kind: 'wait', purpose: purpose.value, duration: understood.value.text })
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error)
    if (kept.ok) duration.value = initial.duration ?? ''
  }
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault()
        void submit()
      }}
    >
      <Choices label={t('What for')} choices={WAITED} chosen={purpose.value} choose={(to) => (purpose.value = to)} />
      <EntryBlank
        {...DURATION}
        id={id}
        units={units}
        example={t('for example 15 min')}
        before={initial.duration}
        text={duration.value}
        type={(to) => {
          duration.value = to
          trouble.value = undefined
        }}
      />
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
      <button type="submit" class="act">
        {t(keepLabel)}
      </button>
    </form>
  )
}
