import type { Dose } from '@chargewright/charging'
import { type Fact, fold, lastChange } from '@chargewright/visit'
import type { ComponentChildren } from 'preact'
import { useMemo, useRef } from 'preact/hooks'
import { LivePlace } from '../live/live-place.tsx'
import { ActList } from '../parts/act-list.tsx'
import { CautionList } from '../parts/caution-list.tsx'
import { DeviceSwitches } from '../parts/device-switches.tsx'
import { FindingKey } from '../parts/finding-key.tsx'
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
import { useLessons } from '../parts/use-lessons.ts'
import { useUndoKeys } from '../parts/use-undo-keys.ts'
import { VisitAnswer } from '../parts/visit-answer.tsx'
import { VisitLog } from '../parts/visit-log.tsx'
import { VisitTools } from '../parts/visit-tools.tsx'
import { aboutSystem } from '../session/about-system.ts'
import { besideReadings } from '../session/beside-readings.ts'
import { withInstrument } from '../session/instruments.ts'
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
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { useAnswer } from '../worker/use-answer.ts'

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
  const visit = useMemo(() => fold(stored), [stored])
  const lessons = useLessons(session, stored.system, stored.id)
  const events = useMemo(
    () => ({ id: stored.id, events: stored.events, earlier: lessons.visits.map(({ id, events }) => ({ id, events })) }),
    [stored, lessons],
  )
  const ofSystem = useMemo(() => {
    const system = session.systems.value?.find(({ id }) => id === stored.system)
    return systemSoFar(system, stored, session.visits.value ?? [])
  }, [session.systems.value, session.visits.value, stored])
  const assessing = useAnswer('assess', events)
  // The finding first: the engine does one thing after the other, and drawing takes as long as assessing.
  const drawn = useRef<typeof events>(undefined)
  if (assessing.state !== 'working') drawn.current = events
  // Until there is an answer, the page is whole but for it.
  const assessment = assessing.answer?.assessment
  const units = preferences.units.value
  const remark = useMemo(() => remarks(visit, assessment ?? visit, units), [visit, assessment, units])
  const change = useMemo(() => lastChange(visit), [visit])
  const asked = new Set(assessment?.finding.next.map(({ entry }) => entry.what))
  const { facts } = visit.system
  const record = (fact: Fact) => session.record(stored.id, withInstrument(fact, preferences.instruments.value))
  const showEntry = (eventId: string) => {
    const entry = visit.log.find(({ id }) => id === eventId)
    if (entry) reveal(logLineId(entry.position))
  }
  const undo = () => void session.undo(stored.id)
  const redo = () => void session.redo(stored.id)
  useUndoKeys(undo, redo)
  const shown = { units, showEntry }
  const step = { visit, events, instruments: preferences.instruments.value, record, ...shown }
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
        {assessment && <FindingKey kind={assessment.finding.kind} />}
      </PageBar>
      <UndoneNotice events={stored.events} redo={redo} />
      <main class="visit">
        <div class="answer">
          <VisitAnswer
            visit={visit}
            asking={assessing}
            system={stored.system}
            lessons={lessons}
            session={session}
            record={bench === undefined ? record : undefined}
            {...shown}
          />
          {remark.others.map((problem) => (
            <p key={problemInWords(problem)} class="trouble">
              {problemInWords(problem)}
            </p>
          ))}
          {stored.about !== undefined && <p class="about">{stored.about}</p>}
        </div>
        <div class="entries">
          <div class="shown-as">
            <DeviceSwitches preferences={preferences} />
            <KeptState keeping={session.keeping.value} />
          </div>
          {bench?.(assessment?.finding.dose)}
          <SystemForm
            system={visit.system}
            units={units}
            remarkOn={remark.onFact}
            state={(stated) => record({ kind: 'system-described', facts: stated })}
          />
          <ReadingWalk
            steps={{ evaporator: <AirflowPlace {...step} />, power: <CompressorPlace {...step} /> }}
            readings={visit.readings}
            facts={facts}
            askedFor={asked}
            change={change}
            beside={besideReadings(assessment?.measures ?? {}, visit.readings)}
            remarkOn={remark.onReading}
            record={(what, value) => record({ kind: 'reading', what, value })}
            care={<CautionList cautions={assessment?.beside['connect-gauge'] ?? []} units={units} />}
            {...shown}
          />
          <LivePlace units={units} theme={preferences.theme.value} record={record} />
          {drawn.current && <PicturePlace visit={drawn.current} units={units} />}
          <ObservationList
            observations={visit.observations}
            change={change}
            askedFor={asked}
            record={(what, answer) => record({ kind: 'observation', what, answer })}
          />
          <BeforeCharging {...step} />
          {bench === undefined && (
            <ActList dose={assessment?.finding.dose} beside={assessment?.beside} units={units} record={record} />
          )}
          {bench === undefined && <PhotoList logs={[stored]} into={stored.id} session={session} />}
          {bench === undefined && <MoveVisitPlace stored={stored} session={session} />}
          <VisitLog
            log={visit.log}
            problems={[...visit.problems, ...visit.doubts]}
            units={units}
            correct={(eventId, replacement, reason) => session.correct(stored.id, eventId, replacement, reason)}
          />
          <VisitTools
            stored={stored}
            exported={exported}
            events={events}
            system={bench === undefined ? ofSystem : undefined}
            name={facts.name}
            units={units}
            preferences={preferences}
          />
        </div>
        <Keypad />
      </main>
    </>
  )
}
