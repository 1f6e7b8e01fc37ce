import type { Dose } from '@chargewright/charging'
import { type Fact, fold, lastChange, type SystemStatement } from '@chargewright/visit'
import type { ComponentChildren } from 'preact'
import { useMemo, useRef } from 'preact/hooks'
import { LivePlace } from '../live/live-place.tsx'
import { ActList } from '../parts/act-list.tsx'
import { CautionList } from '../parts/caution-list.tsx'
import { DeviceSwitches } from '../parts/device-switches.tsx'
import { FindingKey } from '../parts/finding-key.tsx'
import { InTurn } from '../parts/in-turn.tsx'
import { KeptState } from '../parts/kept-state.tsx'
import { Keypad } from '../parts/keypad.tsx'
import { MoveVisitPlace } from '../parts/move-visit-place.tsx'
import { ObservationList } from '../parts/observation-list.tsx'
import { PageBar } from '../parts/page-bar.tsx'
import { PhotoList } from '../parts/photo-list.tsx'
import { PicturePlace } from '../parts/picture-place.tsx'
import { ReadingWalk } from '../parts/reading-walk.tsx'
import { logLineId, reveal } from '../parts/reveal.ts'
import { SystemForm } from '../parts/system-form.tsx'
import { UndoneNotice } from '../parts/undone-notice.tsx'
import { useKeptParts } from '../parts/use-kept-parts.ts'
import { useLessons } from '../parts/use-lessons.ts'
import { useSteady } from '../parts/use-steady.ts'
import { useUndoKeys } from '../parts/use-undo-keys.ts'
import { VisitAnswer } from '../parts/visit-answer.tsx'
import { VisitLog } from '../parts/visit-log.tsx'
import { VisitTools } from '../parts/visit-tools.tsx'
import { aboutSystem } from '../session/about-system.ts'
import { besideReadings } from '../session/beside-readings.ts'
import { withInstrument } from '../session/instruments.ts'
import { photosIn } from '../session/photos-of.ts'
import type { Preferences } from '../session/preference.ts'
import { remarks } from '../session/remarks.ts'
import { PRACTICE_ADDRESS, systemAddress } from '../session/route.ts'
import type { Session } from '../session/session.ts'
import { systemSoFar } from '../session/system-so-far.ts'
import { nextUndo } from '../session/undo.ts'
import { AirflowPlace } from '../steps/airflow-place.tsx'
import { BeforeCharging } from '../steps/before-charging.tsx'
import { CompressorPlace } from '../steps/compressor-place.tsx'
import type { StoredVisit } from '../store/visit-store.ts'
import { t } from '../words/t.ts'
import { useAssessed } from '../worker/use-assessed.ts'
import { useForesight } from '../worker/use-foresight.ts'

interface Props {
  readonly stored: StoredVisit
  readonly session: Session
  readonly preferences: Preferences
  /** The visit was exported by itself. */
  readonly exported?: (visit: StoredVisit) => void
  /** On the practice bench: the system that is worked on, in the place of what was done to a real one. */
  readonly bench?: (asked: Dose | undefined) => ComponentChildren
}

/** One visit, as a work order in the order of the walk: the finding on top, then what it came from. */
export function VisitScreen({ stored, session, preferences, exported, bench }: Props) {
  const visit = useKeptParts(useMemo(() => fold(stored), [stored]))
  const lessons = useLessons(session, stored.system, stored.id)
  const eventsOf = ({ id, events }: StoredVisit) => ({ id, events, earlier: lessons.visits.map(withoutHead) })
  const events = useKeptParts(eventsOf(stored))
  const ahead = session.ahead.value?.find(({ id }) => id === stored.id)
  const assessing = useAssessed(events, ahead && eventsOf(ahead))
  // The finding first: the engine does one thing after the other, and drawing takes as long as assessing.
  const drawn = useRef<typeof events>(undefined)
  if (assessing.state !== 'working') drawn.current = events
  // Until there is an answer, the page is whole but for it.
  const assessment = assessing.answer?.assessment
  const units = preferences.units.value
  const remark = useKeptParts(useMemo(() => remarks(visit, assessment ?? visit, units), [visit, assessment, units]))
  const change = useMemo(() => lastChange(visit), [visit])
  const asked = useKeptParts(assessment?.finding.next.map(({ entry }) => entry.what) ?? [])
  const askedFor = useMemo(() => new Set(asked), [asked])
  const measures = assessment?.measures
  const beside = useKeptParts(useMemo(() => besideReadings(measures ?? {}, visit.readings), [measures, visit.readings]))
  const photos = useKeptParts(photosIn(visit))
  const { facts } = visit.system
  const record = useSteady((fact: Fact) =>
    session.record(stored.id, withInstrument(fact, preferences.instruments.value)),
  )
  const state = useSteady((stated: SystemStatement) => record({ kind: 'system-described', facts: stated }))
  const foresee = useForesight(events)
  const correct = useSteady((eventId: string, replacement: Fact | undefined, reason: string | undefined) =>
    session.correct(
      stored.id,
      eventId,
      replacement && withInstrument(replacement, preferences.instruments.value),
      reason,
    ),
  )
  const showEntry = useSteady((eventId: string) => {
    const entry = visit.log.find(({ id }) => id === eventId)
    if (entry) reveal(logLineId(entry.position))
  })
  const undo = useSteady(() => void session.undo(stored.id))
  const redo = useSteady(() => void session.redo(stored.id))
  useUndoKeys(undo, redo)
  const ofSystem = useSteady(() => {
    const system = session.systems.value?.find(({ id }) => id === stored.system)
    return bench === undefined ? systemSoFar(system, stored, session.visits.value ?? []) : undefined
  })
  const shown = { units, showEntry }
  const step = {
    visit,
    events,
    instruments: preferences.instruments.value,
    record,
    beside: assessment?.beside,
    ...shown,
  }
  return (
    <>
      <PageBar
        name={facts.name ?? t('New visit')}
        back={
          bench === undefined
            ? { address: systemAddress(stored.system), name: t('The system and its visits') }
            : { address: PRACTICE_ADDRESS, name: t('The practice bench') }
        }
        about={aboutSystem(
          visit.system,
          { designation: assessing.answer?.refrigerant, invented: stored.origin === 'demo' },
          units,
        )}
        undo={nextUndo(stored.events) && undo}
      >
        <FindingKey kind={assessment?.finding.kind} />
      </PageBar>
      <UndoneNotice events={stored.events} redo={redo} />
      <main class="visit">
        <div class="answer">
          <VisitAnswer
            visit={visit}
            asking={assessing}
            others={remark.others}
            system={stored.system}
            lessons={lessons}
            session={session}
            record={bench === undefined ? record : undefined}
            {...shown}
          />
          {/* Under the answer: drawn before it, it would jump. */}
          {(assessment || assessing.state === 'failed') && stored.about !== undefined && (
            <p class="about">{stored.about}</p>
          )}
        </div>
        <div class="entries">
          <InTurn>
            <div class="shown-as">
              <DeviceSwitches preferences={preferences} />
              <KeptState session={session} />
            </div>
            {bench?.(assessment?.finding.dose)}
            <SystemForm system={visit.system} units={units} remarks={remark.facts} state={state} />
            <ReadingWalk
              steps={{ evaporator: <AirflowPlace {...step} />, power: <CompressorPlace {...step} /> }}
              readings={visit.readings}
              facts={facts}
              askedFor={askedFor}
              change={change}
              beside={beside}
              remarks={remark.readings}
              record={record}
              foresee={foresee}
              care={<CautionList cautions={assessment?.beside['connect-gauge'] ?? []} units={units} />}
              {...shown}
            />
            <LivePlace units={units} theme={preferences.theme.value} record={record} />
            {drawn.current && <PicturePlace visit={drawn.current} units={units} />}
            <ObservationList observations={visit.observations} change={change} askedFor={askedFor} record={record} />
            <BeforeCharging {...step} />
            {bench === undefined && (
              <ActList dose={assessment?.finding.dose} beside={assessment?.beside} units={units} record={record} />
            )}
            {bench === undefined && <PhotoList photos={photos} into={stored.id} session={session} />}
            {bench === undefined && <MoveVisitPlace stored={stored} session={session} />}
            <VisitLog log={visit.log} problems={[...visit.problems, ...visit.doubts]} units={units} correct={correct} />
            <VisitTools
              stored={stored}
              exported={exported}
              events={events}
              system={ofSystem}
              name={facts.name}
              units={units}
              preferences={preferences}
            />
          </InTurn>
        </div>
        <Keypad />
      </main>
    </>
  )
}

const withoutHead = ({ id, events }: StoredVisit) => ({ id, events })
