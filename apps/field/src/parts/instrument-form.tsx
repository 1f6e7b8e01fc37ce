import { type Dimension, fail, format, type UnitPreference } from '@chargewright/quantity'
import { type Instrument, type InstrumentId, instrumentSort, readInstrument } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { describedBy, draftOf, type InstrumentDraft } from '../session/instrument-draft.ts'
import { tryInstrument } from '../session/try-instrument.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { EntryBlank } from './entry-blank.tsx'
import { Trouble } from './trouble.tsx'

interface Props {
  readonly id: InstrumentId
  readonly mine: Instrument | undefined
  readonly units: UnitPreference
  readonly keep: (instrument: Instrument | undefined) => void
}

/** How good an instrument is, from its data sheet or its dial; with what it makes of a usual reading. */
export function InstrumentForm({ id, mine, units, keep }: Props) {
  const draft = useSignal(draftOf(mine))
  const trouble = useSignal<string | undefined>(undefined)
  const [shown] = instrumentSort(id).accepts as readonly [Dimension]
  const error: readonly Dimension[] = [ERRORS[shown] ?? shown]
  const instrument = describedBy(draft.value, error, units)
  const tried = isKeepable(instrument) ? tryInstrument(id, instrument) : fail(problemInWords(NO_CLASS))
  const set = (part: keyof InstrumentDraft) => (text: string) => {
    draft.value = { ...draft.value, [part]: text }
    trouble.value = undefined
  }
  const blank = (part: keyof InstrumentDraft, label: string, example: string) => (
    <EntryBlank
      id={`${id}-${part}`}
      label={label}
      accepts={error}
      units={units}
      example={example}
      text={draft.value[part]}
      type={set(part)}
    />
  )
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault()
        if (!tried.ok) trouble.value = tried.error
        else keep(Object.keys(instrument).length === 0 ? undefined : instrument)
      }}
    >
      <label class="form-label" for={`${id}-name`}>
        {t('Name or mark')}
      </label>
      <input
        id={`${id}-name`}
        class="form-blank"
        autoComplete="off"
        maxLength={200}
        value={draft.value.name}
        onInput={(event) => set('name')(event.currentTarget.value)}
      />
      {blank('accuracy', 'Greatest error by its data sheet', 'behind the ±, with its unit')}
      {shown === 'gauge pressure' && (
        <>
          <p class="hint">{t('Or what stands on the dial of a gauge:')}</p>
          <label class="form-label" for={`${id}-class`}>
            {t('Class')}
          </label>
          <input
            id={`${id}-class`}
            class="form-blank"
            inputMode="decimal"
            autoComplete="off"
            placeholder={t('for example 1.6')}
            value={draft.value.class}
            onInput={(event) => set('class')(event.currentTarget.value)}
          />
          {blank('span', 'Span of the scale', 'from end to end')}
        </>
      )}
      {blank('resolution', 'Smallest step it shows', 'with its unit')}
      <p class="form-says" role="status">
        {tried.ok && (
          <>
            {t('a usual reading would be')} <strong>{format(tried.value, units, true)}</strong>
          </>
        )}
      </p>
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
      <button type="submit" class="act">
        {t('Read with it from now on')}
      </button>
      {mine && (
        <button type="button" class="key" onClick={() => keep(undefined)}>
          {t('Back to a plain one')}
        </button>
      )}
    </form>
  )
}

/** An error is a difference. */
const ERRORS: Readonly<Partial<Record<Dimension, Dimension>>> = {
  temperature: 'temperature difference',
  'gauge pressure': 'pressure difference',
}

/** The record takes no class that is no number, and none beyond any gauge. */
const isKeepable = (instrument: Instrument) => readInstrument(instrument) !== undefined

const NO_CLASS = { kind: 'unreadable', field: 'Class', value: 'this', accepted: 'a number from 0 to 10' } as const
