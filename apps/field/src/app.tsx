import { type ReadonlySignal, useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import { useEffect } from 'preact/hooks'
import { StartScreen } from './screens/start-screen.tsx'
import type { VisitScreen } from './screens/visit-screen.tsx'
import type { DeviceState } from './session/device-state.ts'
import type { Preferences } from './session/preference.ts'
import { type Route, START_ADDRESS, visitAddress } from './session/route.ts'
import type { Session } from './session/session.ts'

interface Props {
  readonly route: ReadonlySignal<Route>
  readonly session: Session
  readonly preferences: Preferences
  readonly device: DeviceState
}

/** Chooses the screen. The visit screen brings the whole engine with it and comes as a part of its own. */
export function App({ route: { value: route }, session, preferences, device }: Props) {
  const Visit = useSignal<ComponentType<Parameters<typeof VisitScreen>[0]> | undefined>(undefined)
  useEffect(() => {
    void import('./screens/visit-screen.tsx').then(({ VisitScreen }) => {
      Visit.value = VisitScreen
    })
  }, [])
  useEffect(() => {
    document.querySelector<HTMLElement>('h1')?.focus()
  }, [route, Visit.value])

  if (route.kind === 'start') return <StartScreen session={session} preferences={preferences} device={device} />
  const visits = session.visits.value
  if (!visits || !Visit.value) return <main class="waiting" aria-busy="true" />
  const stored = visits.find(({ id }) => visitAddress(id) === visitAddress(route.id))
  if (!stored) return <NotHere />
  return <Visit.value key={stored.id} stored={stored} session={session} preferences={preferences} />
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
