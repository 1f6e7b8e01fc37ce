import type { UnitPreference } from '@chargewright/quantity'
import { READING_IDS, type ReadingId, readingKind, STATIONS } from '@chargewright/visit'
import { useId } from 'preact/hooks'
import { t } from '../words/t.ts'
import type { Meanings } from './column-memory.ts'
import { guessUnit } from './guess-meaning.ts'
import { type Column, type Meaning, type Recording, unitsFor } from './recording.ts'

interface Props {
  readonly recording: Recording
  readonly meanings: Meanings
  readonly units: UnitPreference
  readonly mean: (header: string, meaning: Meaning | null) => void
  /** Said before, for a log with these headers: then it stays folded. */
  readonly known: boolean
}

/** What each column is: guessed, then said by hand, and remembered for the next file with these headers. */
export function ColumnList({ recording, meanings, units, mean, known }: Props) {
  const used = recording.columns.filter(({ header }) => meanings[header]).length
  return (
    <details class="group columns" open={!known}>
      <summary>
        <h3>{t('{0}: what each column is', recording.name)}</h3>
        <span class="group-count">{t('{0} of {1} used', used, recording.columns.length)}</span>
      </summary>
      {recording.columns.map((column) => (
        <ColumnLine
          key={column.header}
          column={column}
          meaning={meanings[column.header] ?? null}
          units={units}
          mean={(meaning) => mean(column.header, meaning)}
        />
      ))}
    </details>
  )
}

interface LineProps {
  readonly column: Column
  readonly meaning: Meaning | null
  readonly units: UnitPreference
  readonly mean: (meaning: Meaning | null) => void
}

function ColumnLine({ column: { header, samples }, meaning, units, mean }: LineProps) {
  const id = useId()
  return (
    <div class="column-line" data-used={meaning !== null}>
      <label for={id}>
        {header} <span class="column-last">{t('last {0}', samples.at(-1)?.number ?? '')}</span>
      </label>
      <select
        id={id}
        class="form-blank"
        value={meaning?.what ?? ''}
        onChange={(event) => {
          const what = event.currentTarget.value as ReadingId | ''
          mean(what === '' ? null : { what, unit: guessUnit(header, what, units) })
        }}
      >
        <option value="">{t('not used')}</option>
        {STATIONS.map((station) => (
          <optgroup key={station.id} label={`${station.number} ${t(station.label)}`}>
            {READING_IDS.filter((what) => readingKind(what).station === station.id).map((what) => (
              <option key={what} value={what}>
                {t(readingKind(what).label)}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      {meaning && (
        <select
          class="form-blank"
          aria-label={t('Unit of {0}', header)}
          value={meaning.unit}
          onChange={(event) => mean({ ...meaning, unit: event.currentTarget.value })}
        >
          {unitsFor(meaning.what).map(({ symbol }) => (
            <option key={symbol} value={symbol}>
              {symbol}
            </option>
          ))}
        </select>
      )}
    </div>
  )
}
