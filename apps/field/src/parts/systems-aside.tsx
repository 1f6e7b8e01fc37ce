import { factsOf } from '../store/facts-of.ts'
import type { StoredSystem } from '../store/visit-store.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly systems: readonly StoredSystem[]
  readonly bringBack: (id: string) => void
}

/** The systems that were put aside, and the way back for each. Invented ones go and come together. */
export function SystemsAside({ systems, bringBack }: Props) {
  const aside = systems.filter((system) => system.setAside && system.origin !== 'demo')
  if (aside.length === 0) return null
  return (
    <details class="fold">
      <summary>{t('Put aside: {0}', aside.length)}</summary>
      <ul class="rows">
        {aside.map(({ id, events }) => {
          const name = factsOf(events)?.name ?? t('System without a name')
          return (
            <li key={id} class="assumed-fact">
              <strong>{name}</strong>
              <button type="button" class="key" aria-label={t('Bring back: {0}', name)} onClick={() => bringBack(id)}>
                {t('Bring back')}
              </button>
            </li>
          )
        })}
      </ul>
    </details>
  )
}
