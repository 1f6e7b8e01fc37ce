import { applianceUse } from '@chargewright/ledger'
import { fold, type SystemStatement } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useMemo } from 'preact/hooks'
import { AssumedList } from '../parts/assumed-list.tsx'
import { ChartOffer } from '../parts/chart-offer.tsx'
import { LearntPlace } from '../parts/learnt-place.tsx'
import { OpenVisit } from '../parts/open-visit.tsx'
import { PageBar } from '../parts/page-bar.tsx'
import { PhotoList } from '../parts/photo-list.tsx'
import { SystemForm } from '../parts/system-form.tsx'
import { SystemLabel } from '../parts/system-label.tsx'
import { Trouble } from '../parts/trouble.tsx'
import { UndoneNotice } from '../parts/undone-notice.tsx'
import { useLessons } from '../parts/use-lessons.ts'
import { useUndoKeys } from '../parts/use-undo-keys.ts'
import { VisitHistory } from '../parts/visit-history.tsx'
import { aboutSystem } from '../session/about-system.ts'
import { assumedFacts } from '../session/carried.ts'
import { knownSystems } from '../session/known-systems.ts'
import { forgettingsOf, visitsTo } from '../session/lessons.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import { photosOf } from '../session/photos-of.ts'
import type { Preferences } from '../session/preference.ts'
import { remarks } from '../session/remarks.ts'
import { START_ADDRESS, visitAddress } from '../session/route.ts'
import type { Session } from '../session/session.ts'
import { nextUndo } from '../session/undo.ts'
import { LeakRatePlace } from '../steps/leak-rate-place.tsx'
import type { StoredSystem } from '../store/visit-store.ts'
import { t } from '../words/t.ts'
import { useAnswer } from '../worker/use-answer.ts'

interface Props {
  readonly stored: StoredSystem
  readonly session: Session
  readonly preferences: Preferences
}

/** One system: the way to its next visit, what its visits came to, and what is known of it. */
export function SystemScreen({ stored, session, preferences }: Props) {
  const { value: units } = preferences.units
  const { value: all = [] } = session.visits
  const known = useMemo(() => fold(stored), [stored])
  const remark = useMemo(() => remarks(known, known, units), [known, units])
  const visits = useMemo(() => visitsTo(stored.id, all), [all, stored.id])
  const forgettings = useMemo(() => forgettingsOf(stored), [stored])
  const lessons = useLessons(session, stored.id)
  const learning = useAnswer('learntFrom', lessons.visits)
  const others = useMemo(() => {
    const here = (session.systems.value ?? []).filter(({ id, origin }) => id !== stored.id && origin === stored.origin)
    return knownSystems({ systems: here, visits: [] })
  }, [session.systems.value, stored])
  const ofSystem = useMemo(() => [stored, ...visits].map(({ id, events }) => ({ id, events })), [stored, visits])
  const photos = useMemo(() => [stored, ...visits].flatMap(photosOf), [stored, visits])
  const trouble = useSignal<string | undefined>(undefined)
  const { facts } = known.system
  const state = (stated: SystemStatement) => session.record(stored.id, { kind: 'system-described', facts: stated })
  const start = async () => {
    const started = await session.start(stored.id)
    if (started.ok) location.hash = visitAddress(started.value)
    else trouble.value = notKeptInWords(started.error)
  }
  const setAside = async () => {
    const kept = await session.setAside([stored.id], true)
    if (kept.ok) location.hash = START_ADDRESS
    else trouble.value = notKeptInWords(kept.error)
  }
  const undo = () => void session.undo(stored.id)
  const redo = () => void session.redo(stored.id)
  useUndoKeys(undo, redo)
  return (
    <>
      <PageBar
        name={facts.name ?? t('System without a name')}
        about={aboutSystem(known.system, { invented: stored.origin === 'demo' }, units)}
        back={{ address: START_ADDRESS, name: t('All systems') }}
        undo={nextUndo(stored.events) && undo}
      />
      <UndoneNotice events={stored.events} redo={redo} />
      <main class="visit system-page">
        <div class="answer">
          <OpenVisit visits={visits} />
          <button type="button" class="act" onClick={() => void start()}>
            {t('New visit')}
          </button>
          {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
          <VisitHistory visits={visits} forgettings={forgettings} units={units} />
          <LearntPlace
            system={stored.id}
            lessons={lessons}
            learntFrom={learning.answer ?? 0}
            absent={
              visits.length > 0 && learning.answer !== undefined
                ? t('Nothing learnt yet: a visit teaches once its causes can be weighed.')
                : undefined
            }
            session={session}
          />
          {visits.length > 0 && <LeakRatePlace visits={ofSystem} use={applianceUse(facts.application)} units={units} />}
        </div>
        <div class="entries">
          <AssumedList facts={facts} assumed={assumedFacts(stored.events)} state={state} />
          <ChartOffer facts={facts} known={others} state={state} />
          <SystemForm system={known.system} units={units} remarks={remark.facts} state={state} />
          <PhotoList photos={photos} into={stored.id} session={session} />
          <SystemLabel id={stored.id} name={facts.name} refrigerant={facts.refrigerant} />
          <section class="aside-act">
            <button type="button" class="key" onClick={() => void setAside()}>
              {t('Put this system aside')}
            </button>
            <p class="hint">
              {t('It goes out of the list with its visits; nothing is deleted, and it can come back.')}
            </p>
          </section>
        </div>
      </main>
    </>
  )
}
