import type { Evidence, Quantity, UnitPreference } from '@chargewright/quantity'
import {
  doubtReading,
  type Fact,
  hasPlaceFor,
  type Origin,
  READING_IDS,
  type Reading,
  type ReadingId,
  readingKind,
  STATIONS,
  type StationId,
  type Visit,
} from '@chargewright/visit'
import type { ComponentChildren } from 'preact'
import { isBefore } from '../session/before-change.ts'
import type { Kept } from '../session/session.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { EvidenceTree } from './evidence-tree.tsx'
import { QuantityField } from './quantity-field.tsx'

interface Props {
  readonly readings: Visit['readings']
  readonly facts: Visit['system']['facts']
  /** The entries that the finding asks for. */
  readonly askedFor: ReadonlySet<string>
  /** The last change to the system. */
  readonly change: Origin | undefined
  /** Derived values, beside the reading that completes them. */
  readonly beside: Readonly<Partial<Record<ReadingId, readonly Evidence[]>>>
  readonly units: UnitPreference
  /** What to mind before the first gauge is connected. */
  readonly care: ComponentChildren
  /** What finds a reading of a station from others, under them. */
  readonly steps: Readonly<Partial<Record<StationId, ComponentChildren>>>
  /** What is wrong with kept readings, in words. */
  readonly remarks: Readonly<Partial<Record<ReadingId, string>>>
  readonly record: (fact: Fact) => Kept
  /** Told of a reading of the weather while it is typed: it moves all that the model predicts. */
  readonly foresee: (fact: Fact) => void
  readonly showEntry: (eventId: string) => void
}

/**
 * The readings by station, in walking order. A missing one stays in its place and says what it would tell; what such a
 * system has no place for is left out.
 */
export function ReadingWalk(props: Props) {
  const { readings, facts, askedFor, change, beside, units, steps, remarks, record, foresee, care, showEntry } = props
  const isShown = (id: ReadingId) => readings[id] !== undefined || askedFor.has(id) || hasPlaceFor(id, facts)
  return (
    <section class="walk" aria-labelledby="readings">
      <h2 id="readings">{t('Readings, in walking order')}</h2>
      {care}
      <ol class="stations">
        {STATIONS.map((station) => (
          <li key={station.id} class="station">
            <h3 class="station-name">
              <span class="station-number">{station.number}</span>
              {t(station.label)}
            </h3>
            {READING_IDS.filter((id) => readingKind(id).station === station.id && isShown(id)).map((id) => (
              <ReadingField
                key={id}
                id={id}
                kept={readings[id]}
                outdated={outdatedInWords(readings[id], change, askedFor.has(id))}
                beside={beside[id]}
                remark={remarks[id]}
                {...{ units, record, foresee, showEntry }}
              />
            ))}
            {steps[station.id]}
          </li>
        ))}
      </ol>
    </section>
  )
}

interface FieldProps extends Pick<Props, 'units' | 'record' | 'foresee' | 'showEntry'> {
  readonly id: ReadingId
  readonly kept: Reading | undefined
  readonly outdated: string | undefined
  readonly beside: readonly Evidence[] | undefined
  readonly remark: string | undefined
}

/** A reading that stands there and is asked for is to be taken again. */
function outdatedInWords(kept: Reading | undefined, change: Origin | undefined, isAskedFor: boolean) {
  if (isBefore(change, kept)) return t('read before the last change')
  return kept && isAskedFor ? t('to be read again') : undefined
}

/** The blank of one reading, and what is derived with it. */
function ReadingField({ id, kept, outdated, beside, remark, units, record, foresee, showEntry }: FieldProps) {
  const { label, accepts, tells, howTo } = readingKind(id)
  return (
    <QuantityField
      id={`reading-${id}`}
      absent={t('would tell {0}', t(tells))}
      question={(quantity, typed) => questionOf(id, quantity, typed)}
      keep={(value) => record({ kind: 'reading', what: id, value })}
      foresee={WEATHER.has(id) ? (value) => foresee({ kind: 'reading', what: id, value }) : undefined}
      {...{ label, accepts, kept, outdated, howTo, remark, units }}
    >
      {beside?.map((evidence) => (
        <EvidenceTree key={evidence.statement.template} {...{ evidence, units, showEntry }} />
      ))}
    </QuantityField>
  )
}

const WEATHER: ReadonlySet<ReadingId> = new Set<ReadingId>([
  'condenser-entering-air',
  'return-air-dry-bulb',
  'return-air-wet-bulb',
  'return-air-humidity',
])

/** A slip of a digit is questioned while it is still under the hand. */
function questionOf(what: ReadingId, quantity: Quantity, typed: string): string | undefined {
  const problem = doubtReading({ what, typed, quantity })
  return problem && t('Doubtful. {0}', problemInWords(problem))
}
