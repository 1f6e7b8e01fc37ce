import './style/tokens.css'
import './style/type.css'
import './style/keys.css'
import './style/keypad.css'
import './style/page.css'
import './style/finding.css'
import './style/entry.css'
import './style/log.css'
import './style/picture.css'
import './style/system.css'
import './style/working.css'
import './style/print.css'
import { effect } from '@preact/signals'
import { render } from 'preact'
import { App } from './app.tsx'
import { deviceState } from './session/device-state.ts'
import { DraftsContext } from './session/draft-place.ts'
import { preferences } from './session/preference.ts'
import { routeSignal } from './session/route.ts'
import { createSession } from './session/session.ts'
import { browserStore } from './store/browser-store.ts'
import { openDatabase } from './store/database.ts'
import { browserDrafts, memoryDrafts } from './store/drafts.ts'
import { memoryStore } from './store/memory-store.ts'
import { createEngine } from './worker/engine.ts'
import { EngineContext } from './worker/engine-context.ts'
import { openThread } from './worker/open-thread.ts'

const database = await openDatabase()
const session = createSession({
  store: database.ok ? browserStore(database.value) : memoryStore(),
  now: () => new Date().toISOString(),
  newId: () => crypto.randomUUID(),
})
const shown = preferences(() => localStorage)
effect(() => {
  document.documentElement.dataset.theme = shown.theme.value
})
const [drafts] = await Promise.all([database.ok ? browserDrafts(database.value) : memoryDrafts(), session.refresh()])
render(
  <EngineContext.Provider value={createEngine(openThread)}>
    <DraftsContext.Provider value={drafts}>
      <App
        route={routeSignal(window)}
        session={session}
        preferences={shown}
        device={deviceState(navigator, database.ok ? 'kept' : 'page-only')}
      />
    </DraftsContext.Provider>
  </EngineContext.Provider>,
  document.getElementById('app')!,
)

// Once, on the first start: taken away, the invented systems stay away.
if (!session.visits.value?.some(({ origin }) => origin === 'demo')) {
  const { demoVisits } = await import('./demo/demo-visits.ts')
  await session.seed(demoVisits())
}
