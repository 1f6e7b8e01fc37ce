import './style/tokens.css'
import './style/type.css'
import './style/keys.css'
import './style/keypad.css'
import './style/page.css'
import './style/finding.css'
import './style/entry.css'
import './style/log.css'
import './style/picture.css'
import './style/working.css'
import './style/print.css'
import { effect } from '@preact/signals'
import { render } from 'preact'
import { App } from './app.tsx'
import { deviceState } from './session/device-state.ts'
import { preferences } from './session/preference.ts'
import { routeSignal } from './session/route.ts'
import { createSession } from './session/session.ts'
import { browserStore } from './store/browser-store.ts'
import { memoryStore } from './store/memory-store.ts'
import { createEngine } from './worker/engine.ts'
import { EngineContext } from './worker/engine-context.ts'
import { openThread } from './worker/open-thread.ts'

const stored = await browserStore()
const session = createSession({
  store: stored.ok ? stored.value : memoryStore(),
  now: () => new Date().toISOString(),
  newId: () => crypto.randomUUID(),
})
const shown = preferences(() => localStorage)
effect(() => {
  document.documentElement.dataset.theme = shown.theme.value
})
await session.refresh()
render(
  <EngineContext.Provider value={createEngine(openThread)}>
    <App
      route={routeSignal(window)}
      session={session}
      preferences={shown}
      device={deviceState(navigator, stored.ok ? 'kept' : 'page-only')}
    />
  </EngineContext.Provider>,
  document.getElementById('app')!,
)

// Once, on the first start: taken away, the invented systems stay away.
if (!session.visits.value?.some(({ origin }) => origin === 'demo')) {
  const { demoVisits } = await import('./demo/demo-visits.ts')
  await session.seed(demoVisits())
}
