import type { Fact, FactOf } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { Choices } from '../parts/choices.tsx'
import { Trouble } from '../parts/trouble.tsx'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly initial?: FactOf<'vacuum-log'>
  readonly keepLabel?: string
  readonly record: (fact: Fact) => Kept
}

const UNITS = { micron: 'micron', Pa: 'Pa', mbar: 'mbar' } as const

/** The log of a vacuum gauge as text: it takes the place of single readings of the test. */
export function VacuumLogForm({ initial, keepLabel = 'Enter the log', record }: Props) {
  const id = useId()
  const text = useSignal(initial?.text ?? '')
  const unit = useSignal<keyof typeof UNITS | undefined>(initial ? unitIn(initial) : 'micron')
  const trouble = useSignal<string | undefined>(undefined)
  const keep = async () => {
    const kept = await record({ kind: 'vacuum-log', text: text.value.trim(), ...(unit.value && { unit: unit.value }) })
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error, 'Log of the vacuum gauge')
    if (kept.ok && !initial) text.value = ''
  }
  return (
    <div class="form">
      <label class="form-label" for={id}>
        {t('Log of the vacuum gauge')}
      </label>
      <p class="hint" id={`${id}-says`}>
        {t(
          'From the moment the valve was shut: time and pressure on each line, set apart by a comma, a semicolon or a tab. A first line may name the unit.',
        )}
      </p>
      <textarea
        id={id}
        rows={6}
        spellcheck={false}
        aria-describedby={`${id}-says`}
        placeholder={SAMPLE}
        value={text.value}
        onInput={(event) => {
          text.value = event.currentTarget.value
          trouble.value = undefined
        }}
      />
      <Choices
        label={t('Unit, where the log names none')}
        choices={UNITS}
        chosen={unit.value}
        choose={(to) => (unit.value = to)}
      />
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
      <button type="button" class="act" onClick={() => void keep()}>
        {t(keepLabel)}
      </button>
    </div>
  )
}

/** A unit that is none of the choices is named by the log itself, or by nothing. */
const unitIn = ({ unit }: FactOf<'vacuum-log'>) =>
  unit !== undefined && Object.hasOwn(UNITS, unit) ? (unit as keyof typeof UNITS) : undefined

/** In the words in which a log is read, in every language. */
const SAMPLE = 'time, micron\n0 min, 250\n5 min, 310\n10 min, 340'
