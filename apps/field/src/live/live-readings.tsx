import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import './live.css'
import { steadiness, steadyValue } from '@chargewright/charging'
import { READING_IDS, readingKind } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useEffect, useMemo, useRef } from 'preact/hooks'
import { notKeptInWords } from '../session/not-kept.ts'
import { ColumnList } from './column-list.tsx'
import { columnMemory, type Meanings } from './column-memory.ts'
import { guessMeaning } from './guess-meaning.ts'
import type { LiveProps } from './live-place.tsx'
import { channelOf, type Meaning, type Recording, typedValue } from './recording.ts'
import { recordingOfText } from './recording-of-text.ts'
import { SourceKeys } from './source-keys.tsx'
import { SteadinessReport } from './steadiness-report.tsx'
import { TrendPlots } from './trend-plots.tsx'
import { useSensors } from './use-sensors.ts'

const memory = columnMemory(() => localStorage)

/** Instruments that keep measuring: where they come from, what their columns are, whether they hold still, their values. */
export function LiveReadings({ units, theme, record }: LiveProps) {
  const log = useSignal<Recording | undefined>(undefined)
  const meanings = useSignal<Meanings>({})
  const isKnown = useSignal(false)
  const message = useSignal<Message | undefined>(undefined)
  const sensors = useSensors((column, meaning) => {
    log.value = undefined
    if (!(column in meanings.value)) meanings.value = { ...meanings.value, [column]: meaning ?? null }
  })
  const recording = log.value ?? sensors.recording.value

  const takeText = (name: string, text: string) => {
    const read = recordingOfText(name, text)
    if (!read.ok) {
      message.value = { kind: 'trouble', text: problemInWords(read.error) }
      return
    }
    sensors.stop()
    message.value = undefined
    const headers = read.value.columns.map(({ header }) => header)
    const recalled = memory.recall(headers)
    isKnown.value = recalled !== undefined
    meanings.value = recalled ?? guesses(headers, units)
    log.value = read.value
  }
  const mean = (header: string, meaning: Meaning | null) => {
    // One reading has one column: said of another, it is taken from the first.
    const others = Object.entries(meanings.value).map(
      ([name, one]) => [name, one && one.what === meaning?.what ? null : one] as const,
    )
    meanings.value = { ...Object.fromEntries(others), [header]: meaning }
    if (log.value)
      memory.remember(
        log.value.columns.map((column) => column.header),
        meanings.value,
      )
  }
  const used = useMemo(
    () =>
      (recording?.columns ?? []).flatMap((column) => {
        const meaning = meanings.value[column.header]
        return meaning ? [{ column, meaning, channel: channelOf(column, meaning) }] : []
      }),
    [recording, meanings.value],
  )
  const channels = useMemo(() => used.map(({ channel }) => channel), [used])
  const found = useMemo(() => steadiness(channels), [channels])

  const take = async () => {
    const inWalkingOrder = used.toSorted(
      (a, b) => READING_IDS.indexOf(a.meaning.what) - READING_IDS.indexOf(b.meaning.what),
    )
    for (const { column, meaning, channel } of inWalkingOrder) {
      const value = steadyValue(channel)
      if (!value) continue
      const fact = {
        kind: 'reading',
        what: meaning.what,
        value: typedValue(value, meaning.what, meaning.unit),
        instrument: { name: column.instrument.slice(0, LONGEST_NAME) },
      } as const
      const kept = await record(fact)
      if (!kept.ok) {
        message.value = { kind: 'trouble', text: notKeptInWords(kept.error, readingKind(meaning.what).label) }
        return
      }
    }
    message.value = { kind: 'notice', text: t('{0} readings were entered.', used.length) }
  }
  return (
    <div class="live">
      <SourceKeys takeText={takeText} connect={sensors.connect} />
      {(sensors.trouble.value ?? message.value?.text) !== undefined && (
        <Told message={sensors.trouble.value ? { kind: 'trouble', text: sensors.trouble.value } : message.value!} />
      )}
      {recording && (
        <>
          <ColumnList
            key={recording.name}
            recording={recording}
            meanings={meanings.value}
            units={units}
            mean={mean}
            known={isKnown.value}
          />
          {channels.length > 0 && (
            <>
              <SteadinessReport found={found} channels={channels} units={units} />
              <TrendPlots channels={channels} units={units} theme={theme} />
              <button type="button" class="act" onClick={() => void take()}>
                {t('Take these values')}
              </button>
            </>
          )}
        </>
      )}
    </div>
  )
}

interface Message {
  readonly kind: 'trouble' | 'notice'
  readonly text: string
}

/** What a name of an instrument may be long. */
const LONGEST_NAME = 60

/** Comes into view when it appears: what was pressed may stand far from it. */
function Told({ message: { kind, text } }: { readonly message: Message }) {
  const place = useRef<HTMLParagraphElement>(null)
  useEffect(() => place.current?.scrollIntoView({ block: 'nearest' }), [text])
  return (
    <p class={kind} role={kind === 'trouble' ? 'alert' : 'status'} ref={place}>
      {text}
    </p>
  )
}

/** A guess for each column; a reading that two columns could be is given to the first. */
function guesses(headers: readonly string[], units: LiveProps['units']): Meanings {
  const given = new Set<string>()
  return Object.fromEntries(
    headers.map((header) => {
      const guess = guessMeaning(header, units)
      if (!guess || given.has(guess.what)) return [header, null]
      given.add(guess.what)
      return [header, guess]
    }),
  )
}
