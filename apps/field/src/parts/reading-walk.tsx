import type { Evidence, Quantity, UnitPreference } from '@chargewright/quantity'
import {
  doubtReading,
  hasPlaceFor,
  type Origin,
  READING_IDS,
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
  readonly remarkOn: (id: ReadingId) => string | undefined
  readonly record: (id: ReadingId, typed: string) => Kept
  readonly showEntry: (eventId: string) => void
}

/**
 * The readings by station, in walking order. A missing one stays in its place and says what it would tell; what such a
 * system has no place for is left out.
 */
export function ReadingWalk(props: Props) {
  const { readings, facts, askedFor, change, beside, units, steps, remarkOn, record, care, showEntry } = props
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
              <QuantityField
                key={id}
                id={`reading-${id}`}
                label={readingKind(id).label}
                accepts={readingKind(id).accepts}
                kept={readings[id]}
                outdated={isBefore(change, readings[id])}
                absent={t('would tell {0}', t(readingKind(id).tells))}
                howTo={readingKind(id).howTo}
                question={(quantity, typed) => questionOf(id, quantity, typed)}
                remark={remarkOn(id)}
                units={units}
                keep={(typed) => record(id, typed)}
              >
                {beside[id]?.map((evidence) => (
                  <EvidenceTree
                    key={evidence.statement.template}
                    evidence={evidence}
                    units={units}
                    showEntry={showEntry}
                  />
                ))}
              </QuantityField>
            ))}
            {steps[station.id]}
          </li>
        ))}
      </ol>
    </section>
  )
}

/** A slip of a digit is questioned while it is still under the hand. */
function questionOf(what: ReadingId, quantity: Quantity, typed: string): string | undefined {
  const problem = doubtReading({ what, typed, quantity })
  return problem && t('Doubtful. {0}', problemInWords(problem))
}
