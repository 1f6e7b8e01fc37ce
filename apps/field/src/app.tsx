import { type ReadonlySignal, useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import { useEffect } from 'preact/hooks'
import { DraftKey } from './chart-entry/draft-key.ts'
import { download } from './parts/download.ts'
import { Guard } from './parts/guard.tsx'
import { StartScreen } from './screens/start-screen.tsx'
import type { VisitScreen } from './screens/visit-screen.tsx'
import type { DeviceState } from './session/device-state.ts'
import type { Preferences } from './session/preference.ts'
import { type Route, START_ADDRESS, visitAddress } from './session/route.ts'
import type { Session } from './session/session.ts'
import { visitFileOf } from './session/visit-file-of.ts'
import type { StoredVisit } from './store/visit-store.ts'

interface Props {
  readonly route: ReadonlySignal<Route>
  readonly session: Session
  readonly preferences: Preferences
  readonly device: DeviceState
}

/** Chooses the screen. The visit screen comes as a part of its own, after the list. */
export function App({ route: { value: route }, session, preferences, device }: Props) {
  const Visit = useSignal<ComponentType<Parameters<typeof VisitScreen>[0]> | undefined>(undefined)
  const isCutOff = useSignal(false)
  useEffect(() => {
    import('./screens/visit-screen.tsx').then(
      ({ VisitScreen }) => {
        Visit.value = VisitScreen
      },
      () => {
        isCutOff.value = true
      },
    )
  }, [])
  useEffect(() => {
    const heading = document.querySelector<HTMLElement>('h1')
    heading?.focus({ preventScroll: true })
    document.title = heading ? `${heading.textContent} · Chargewright` : 'Chargewright'
  }, [route, Visit.value, isCutOff.value])
  // A place in the list is none in the visit: every page opens at its top.
  useEffect(() => scrollTo(0, 0), [route])

  if (route.kind === 'start') return <StartScreen session={session} preferences={preferences} device={device} />
  if (isCutOff.value) return <CutOff />
  const visits = session.visits.value
  if (!visits || !Visit.value) return <main class="waiting" aria-busy="true" />
  const stored = visits.find(({ id }) => visitAddress(id) === visitAddress(route.id))
  if (!stored) return <NotHere />
  return (
    <Guard key={stored.id} fallback={<Unreadable stored={stored} />}>
      <DraftKey.Provider value={stored.id}>
        <Visit.value stored={stored} session={session} preferences={preferences} />
      </DraftKey.Provider>
    </Guard>
  )
}

function Unreadable({ stored }: { readonly stored: StoredVisit }) {
  return (
    <main class="start">
      <h1 tabIndex={-1}>This version cannot show this visit</h1>
      <p>Nothing is lost: the entries are kept as they are, and the file holds them all.</p>
      <button type="button" class="key" onClick={() => download(visitFileOf(stored, undefined))}>
        Export
      </button>
      <a class="key" href={START_ADDRESS}>
        All visits
      </a>
    </main>
  )
}

function CutOff() {
  return (
    <main class="start">
      <h1 tabIndex={-1}>The network broke off while this app was loading</h1>
      <p>It has to load once as a whole; from then on it needs no network.</p>
      <button type="button" class="key" onClick={() => location.reload()}>
        Load again
      </button>
    </main>
  )
}

function NotHere() {
  return (
    <main class="start">
      <h1 tabIndex={-1}>This visit is not on this device</h1>
      <p>It was made on another one, perhaps. Export it there, then take the file in here.</p>
      <a class="key" href={START_ADDRESS}>
        All visits
      </a>
    </main>
  )
}
