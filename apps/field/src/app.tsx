import { type ReadonlySignal, useSignal } from '@preact/signals'
import { useEffect } from 'preact/hooks'
import { download } from './parts/download.ts'
import { Guard } from './parts/guard.tsx'
import { PracticePlace } from './practice/practice-place.tsx'
import { StartScreen } from './screens/start-screen.tsx'
import type { Archive } from './session/archive.ts'
import type { DeviceState } from './session/device-state.ts'
import { DraftPage } from './session/draft-place.ts'
import type { Preferences } from './session/preference.ts'
import { type Route, START_ADDRESS, systemAddress, visitAddress } from './session/route.ts'
import type { Session } from './session/session.ts'
import { visitFileOf } from './session/visit-file-of.ts'
import type { StoredVisit } from './store/visit-store.ts'
import { t } from './words/t.ts'

interface Props {
  readonly route: ReadonlySignal<Route>
  readonly session: Session
  readonly archive: Archive
  readonly preferences: Preferences
  readonly device: DeviceState
}

/** Chooses the screen. Those behind the list come as parts of their own, each when it is first asked for. */
export function App({ route: { value: route }, session, archive, preferences, device }: Props) {
  const screens = useSignal<Screens>({})
  const isCutOff = useSignal(false)
  const wanted = route.kind === 'start' || route.kind === 'practice' ? 'visit' : route.kind
  useEffect(() => {
    // The visit page stands ready behind the list, too.
    LOAD[wanted]().then(
      (loaded) => {
        screens.value = { ...screens.value, ...loaded }
      },
      () => {
        isCutOff.value = true
      },
    )
  }, [wanted])
  useEffect(() => {
    const heading = document.querySelector<HTMLElement>('h1')
    // One who types already is not taken out of the field.
    if (!document.activeElement?.matches('input, textarea')) heading?.focus({ preventScroll: true })
    document.title = heading ? `${heading.textContent} · Chargewright` : 'Chargewright'
  }, [route, screens.value, isCutOff.value])
  // A place in the list is none in the visit: every page opens at its top.
  useEffect(() => scrollTo(0, 0), [route])

  if (route.kind === 'start')
    return <StartScreen session={session} archive={archive} preferences={preferences} device={device} />
  if (isCutOff.value) return <CutOff />
  if (route.kind === 'practice')
    return <PracticePlace id={route.id} preferences={preferences} Visit={screens.value.VisitScreen} />
  const [{ value: visits }, { value: systems }] = [session.visits, session.systems]
  const { VisitScreen, SystemScreen, NewSystemScreen } = screens.value
  const shown = { session, preferences }
  const waiting = <main class="waiting" aria-busy="true" />
  if (!visits || !systems) return waiting
  switch (route.kind) {
    case 'new-system':
      return NewSystemScreen ? <NewSystemScreen {...shown} /> : waiting
    case 'system': {
      const system = systems.find(({ id }) => systemAddress(id) === systemAddress(route.id))
      if (!system) return <NotHere what="system" />
      if (!SystemScreen) return waiting
      return (
        <Guard key={system.id} fallback={<UnreadableSystem />}>
          <DraftPage.Provider value={system.id}>
            <SystemScreen stored={system} {...shown} />
          </DraftPage.Provider>
        </Guard>
      )
    }
    case 'visit': {
      const visit = visits.find(({ id }) => visitAddress(id) === visitAddress(route.id))
      if (!visit) return <NotHere what="visit" />
      if (!VisitScreen) return waiting
      return (
        <Guard key={visit.id} fallback={<Unreadable stored={visit} />}>
          <DraftPage.Provider value={visit.id}>
            <VisitScreen stored={visit} exported={(one) => void archive.visitSaved(one)} {...shown} />
          </DraftPage.Provider>
        </Guard>
      )
    }
  }
}

const LOAD = {
  visit: () => import('./screens/visit-screen.tsx'),
  system: () => import('./screens/system-screen.tsx'),
  'new-system': () => import('./screens/new-system-screen.tsx'),
}

type Screens = Partial<
  typeof import('./screens/visit-screen.tsx') &
    typeof import('./screens/system-screen.tsx') &
    typeof import('./screens/new-system-screen.tsx')
>

function Unreadable({ stored }: { readonly stored: StoredVisit }) {
  return (
    <main class="start">
      <h1 tabIndex={-1}>{t('This version cannot show this visit')}</h1>
      <p>{t('Nothing is lost: the entries are kept as they are, and the file holds them all.')}</p>
      <button type="button" class="key" onClick={() => download(visitFileOf(stored, undefined))}>
        {t('Export')}
      </button>
      <AllSystems />
    </main>
  )
}

function UnreadableSystem() {
  return (
    <main class="start">
      <h1 tabIndex={-1}>{t('This version cannot show this system')}</h1>
      <p>{t('Nothing is lost: what was entered is kept as it is, and the export of everything holds it.')}</p>
      <AllSystems />
    </main>
  )
}

function AllSystems() {
  return (
    <a class="key" href={START_ADDRESS}>
      {t('All systems')}
    </a>
  )
}

function CutOff() {
  return (
    <main class="start">
      <h1 tabIndex={-1}>{t('The network broke off while this app was loading')}</h1>
      <p>{t('It has to load once as a whole; from then on it needs no network.')}</p>
      <button type="button" class="key" onClick={() => location.reload()}>
        {t('Load again')}
      </button>
    </main>
  )
}

function NotHere({ what }: { readonly what: 'system' | 'visit' }) {
  return (
    <main class="start">
      <h1 tabIndex={-1}>
        {what === 'visit' ? t('This visit is not on this device') : t('This system is not on this device')}
      </h1>
      <p>{t('It was made on another one, perhaps. Export it there, then take the file in here.')}</p>
      <AllSystems />
    </main>
  )
}
