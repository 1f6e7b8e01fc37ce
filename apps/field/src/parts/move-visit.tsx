import { useSignal } from '@preact/signals'
import { useMemo } from 'preact/hooks'
import { knownSystems, searched } from '../session/known-systems.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import { NEW_SYSTEM_ADDRESS } from '../session/route.ts'
import type { Session } from '../session/session.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { t } from '../words/t.ts'
import { FormBlank } from './form-blank.tsx'
import { Trouble } from './trouble.tsx'

export interface MoveVisitProps {
  readonly stored: StoredVisit
  readonly session: Session
}

/** The other systems of this device: the one that is chosen gets the visit. Invented ones stay among themselves. */
export function MoveVisit({ stored, session }: MoveVisitProps) {
  const asked = useSignal('')
  const said = useSignal<{ readonly trouble: boolean; readonly text: string } | undefined>(undefined)
  const { value: systems = [] } = session.systems
  const others = useMemo(() => {
    const alike = systems.filter(({ id, origin }) => id !== stored.system && (origin === 'demo') === isInvented(stored))
    return knownSystems({ systems: alike, visits: [] })
  }, [systems, stored])
  const found = searched(others, asked.value)
  const move = async (to: string, name: string) => {
    try {
      const kept = await session.move(stored.id, to)
      said.value = kept.ok
        ? { trouble: false, text: t('The visit is at {0} now. An undo takes it back.', name) }
        : { trouble: true, text: notKeptInWords(kept.error) }
    } catch {
      const text = t('This part could not be loaded. Load the page again; every entry is kept.')
      said.value = { trouble: true, text }
    }
  }
  return (
    <div class="move-visit">
      <p class="hint">
        {t(
          'Its entries come with it. What it said of the system goes to the right one, and is taken back at the other.',
        )}
      </p>
      {others.length === 0 && (
        <p>
          {t('No other system on this device yet.')}{' '}
          <a class="link" href={NEW_SYSTEM_ADDRESS}>
            {t('New system')}
          </a>
        </p>
      )}
      {others.length > 0 && (
        <FormBlank
          label={t('Find a system')}
          example={t('name, refrigerant or a word of a note')}
          isSearch
          text={asked}
          type={(text) => {
            asked.value = text
          }}
        />
      )}
      <ul class="rows">
        {found.map(({ system, facts }) => {
          const name = facts.name ?? t('System without a name')
          return (
            <li key={system.id} class="assumed-fact">
              <span>
                <strong>{name}</strong> {facts.refrigerant}
              </span>
              <button
                type="button"
                class="key"
                aria-label={t('It was made at {0}', name)}
                onClick={() => void move(system.id, name)}
              >
                {t('It was here')}
              </button>
            </li>
          )
        })}
      </ul>
      {others.length > 0 && found.length === 0 && (
        <p class="hint" role="status">
          {t('No system here has all these words in its name, its refrigerant or a note.')}
        </p>
      )}
      {said.value?.trouble && <Trouble>{said.value.text}</Trouble>}
      {said.value && !said.value.trouble && (
        <p class="notice" role="status">
          {said.value.text}
        </p>
      )}
    </div>
  )
}

const isInvented = ({ origin }: StoredVisit) => origin === 'demo'
