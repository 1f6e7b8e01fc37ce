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
import { keepPlace } from './parts/keep-place.ts'
import { createArchive } from './session/archive.ts'
import { deviceState } from './session/device-state.ts'
import { DraftsContext } from './session/draft-place.ts'
import { localTime } from './session/local-time.ts'
import { preferences } from './session/preference.ts'
import { routeSignal } from './session/route.ts'
import { createSession } from './session/session.ts'
import { settingsShelf } from './session/settings-shelf.ts'
import { browserStore } from './store/browser-store.ts'
import { openDatabase } from './store/database.ts'
import { browserDrafts, memoryDrafts } from './store/drafts.ts'
import { browserMarks, memoryMarks } from './store/export-marks.ts'
import { memoryStore } from './store/memory-store.ts'
import { speak } from './words/speak.ts'
import { createEngine } from './worker/engine.ts'
import { EngineContext } from './worker/engine-context.ts'
import { openThread } from './worker/open-thread.ts'

const database = await openDatabase()
const store = database.ok ? browserStore(database.value) : memoryStore()
const now = () => localTime(new Date())
const newId = () => crypto.randomUUID()
const session = createSession({
  store,
  now,
  newId,
})
const shown = preferences(() => localStorage, navigator.language)
effect(() => {
  document.documentElement.dataset.theme = shown.theme.value
})
const [drafts, archive] = await Promise.all([
  database.ok ? browserDrafts(database.value) : memoryDrafts(),
  createArchive({
    store,
    marks: database.ok ? browserMarks(database.value) : memoryMarks(),
    settings: settingsShelf(() => localStorage),
    session,
    head: () => ({ id: newId(), at: now() }),
  }),
  session.refresh(),
  // Drawn once its words are there; from then on they follow the choice.
  speak(shown.language.value, document.documentElement),
])
shown.language.subscribe((language) => void speak(language, document.documentElement))
keepPlace(document)
render(
  <EngineContext.Provider value={createEngine(openThread)}>
    <DraftsContext.Provider value={drafts}>
      <App
        route={routeSignal(window)}
        session={session}
        archive={archive}
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
  await session.seed(await demoVisits())
}
