import { useSignal } from '@preact/signals'
import { DevicePromises } from '../parts/device-promises.tsx'
import { DeviceSettings } from '../parts/device-settings.tsx'
import { DeviceSwitches } from '../parts/device-switches.tsx'
import { FilePicker } from '../parts/file-picker.tsx'
import { KeptState } from '../parts/kept-state.tsx'
import { VisitList } from '../parts/visit-list.tsx'
import type { DeviceState } from '../session/device-state.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Preferences } from '../session/preference.ts'
import { visitAddress } from '../session/route.ts'
import type { Session, TakenIn } from '../session/session.ts'

interface Props {
  readonly session: Session
  readonly preferences: Preferences
  readonly device: DeviceState
}

/** The visits on this device, and the ways to a new one. */
export function StartScreen({ session, preferences, device }: Props) {
  const message = useSignal<{ readonly trouble: boolean; readonly text: string } | undefined>(undefined)
  const all = session.visits.value
  const inSight = all?.filter((visit) => !visit.setAside) ?? []
  const own = inSight.filter((visit) => visit.origin !== 'demo')
  const demo = inSight.filter((visit) => visit.origin === 'demo')
  const demoAside = all?.filter((visit) => visit.setAside && visit.origin === 'demo').map(({ id }) => id) ?? []

  const start = async () => {
    const started = await session.start()
    if (started.ok) location.hash = visitAddress(started.value)
    else message.value = { trouble: true, text: notKeptInWords(started.error) }
  }
  const takeIn = async (json: string) => {
    const taken = await session.takeIn(json)
    message.value = taken.ok
      ? { trouble: false, text: ARRIVED[taken.value.arrival] }
      : { trouble: true, text: `The file was not taken in.\n${notKeptInWords(taken.error)}` }
  }
  return (
    <>
      <header class="bar">
        <p class="product">Chargewright</p>
        <DeviceSwitches preferences={preferences} />
      </header>
      <main class="start">
        <h1 tabIndex={-1}>Visits</h1>
        <div class="start-acts">
          <button type="button" class="act" onClick={() => void start()}>
            New visit
          </button>
          <FilePicker label="Take in a visit file" take={takeIn} />
        </div>
        {message.value && (
          <p class={message.value.trouble ? 'trouble' : 'notice'} role={message.value.trouble ? 'alert' : 'status'}>
            {message.value.text}
          </p>
        )}
        {all && own.length === 0 && (
          <p class="hint">
            No visit of your own yet. Start one at the unit: name it, then enter what you read as you walk.
          </p>
        )}
        <VisitList visits={own} />
        <DevicePromises device={device} />
        <DeviceSettings preferences={preferences} />
        <KeptState keeping={session.keeping.value} />
        {demo.length > 0 && (
          <section aria-labelledby="demo">
            <h2 id="demo">Invented systems, to try it out</h2>
            <button
              type="button"
              class="key"
              onClick={() =>
                void session.setAside(
                  demo.map(({ id }) => id),
                  true,
                )
              }
            >
              Take the invented systems away
            </button>
            <VisitList visits={demo} />
          </section>
        )}
        {demo.length === 0 && demoAside.length > 0 && (
          <button type="button" class="key" onClick={() => void session.setAside(demoAside, false)}>
            Bring the invented systems back
          </button>
        )}
      </main>
    </>
  )
}

const ARRIVED: Readonly<Record<TakenIn['arrival'], string>> = {
  new: 'The visit was taken in.',
  known: 'This visit is here already; the file brings nothing new.',
  longer: 'The visit was here already; the entries that were new have been added.',
  parted: 'This visit is here already with other entries. The file was taken in as a second visit, beside it.',
}
