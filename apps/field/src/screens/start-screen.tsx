import { useSignal } from '@preact/signals'
import { useMemo } from 'preact/hooks'
import { DevicePromises } from '../parts/device-promises.tsx'
import { DeviceSettings } from '../parts/device-settings.tsx'
import { DeviceSwitches } from '../parts/device-switches.tsx'
import { ExchangePlace } from '../parts/exchange-place.tsx'
import { FormBlank } from '../parts/form-blank.tsx'
import { InventedSystems } from '../parts/invented-systems.tsx'
import { KeptState } from '../parts/kept-state.tsx'
import { OpenVisit } from '../parts/open-visit.tsx'
import { SystemList } from '../parts/system-list.tsx'
import { SystemsAside } from '../parts/systems-aside.tsx'
import { Trouble } from '../parts/trouble.tsx'
import type { Archive } from '../session/archive.ts'
import type { DeviceState } from '../session/device-state.ts'
import { knownSystems, searched } from '../session/known-systems.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Preferences } from '../session/preference.ts'
import { NEW_SYSTEM_ADDRESS, PRACTICE_ADDRESS, visitAddress } from '../session/route.ts'
import type { Session } from '../session/session.ts'
import { factsOf } from '../store/facts-of.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly session: Session
  readonly archive: Archive
  readonly preferences: Preferences
  readonly device: DeviceState
}

/** The systems on this device, and the ways to a new visit. */
export function StartScreen({ session, archive, preferences, device }: Props) {
  const trouble = useSignal<string | undefined>(undefined)
  const asked = useSignal('')
  const { value: systems = [] } = session.systems
  const { value: visits = [] } = session.visits
  const known = useMemo(() => knownSystems({ systems, visits }), [systems, visits])
  const own = known.filter(({ system }) => system.origin !== 'demo')
  const invented = known.filter(({ system }) => system.origin === 'demo')
  const found = searched(own, asked.value)
  const nameOf = (visit: StoredVisit) => factsOf(visit.events)?.name

  const start = async () => {
    const started = await session.start()
    if (started.ok) location.hash = visitAddress(started.value)
    else trouble.value = notKeptInWords(started.error)
  }
  return (
    <>
      <header class="bar">
        <p class="product">Chargewright</p>
        <DeviceSwitches preferences={preferences} />
      </header>
      <main class="start">
        <h1 tabIndex={-1}>{t('Systems')}</h1>
        <OpenVisit visits={own.flatMap((one) => one.visits)} nameOf={nameOf} />
        <div class="start-acts">
          <a class="act" href={NEW_SYSTEM_ADDRESS}>
            {t('New system')}
          </a>
          <button type="button" class="key" onClick={() => void start()}>
            {t('New visit, described on the way')}
          </button>
          <a class="key" href={PRACTICE_ADDRESS}>
            {t('Practice bench')}
          </a>
        </div>
        {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
        {session.systems.value && own.length === 0 && (
          <div class="teach">
            <p>{t('No system of your own yet.')}</p>
            <p>
              {t(
                'A system is the unit you are called to. Describe it once, from its nameplate; every visit to it then begins with what is known, and its page shows how superheat, subcooling and charge went from visit to visit.',
              )}
            </p>
          </div>
        )}
        {own.length > 0 && (
          <section aria-label={t('Your systems')}>
            <FormBlank
              label={t('Find a system')}
              example={t('name, refrigerant or a word of a note')}
              isSearch
              text={asked}
              type={(text) => {
                asked.value = text
              }}
            />
            <SystemList known={found} />
            {found.length === 0 && (
              <p class="hint" role="status">
                {t('No system here has all these words in its name, its refrigerant or a note.')}
              </p>
            )}
          </section>
        )}
        <SystemsAside systems={systems} bringBack={(id) => void session.setAside([id], false)} />
        <section class="promises" aria-labelledby="device">
          <h2 id="device">{t('This device')}</h2>
          <DevicePromises device={device} />
          <DeviceSettings preferences={preferences} />
          <KeptState session={session} />
          <ExchangePlace session={session} archive={archive} />
        </section>
        <InventedSystems known={invented} shelf={{ systems, visits }} session={session} />
      </main>
    </>
  )
}
