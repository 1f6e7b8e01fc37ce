import type { KnownSystem } from '../session/known-systems.ts'
import type { Session } from '../session/session.ts'
import type { Shelf } from '../store/visit-store.ts'
import { t } from '../words/t.ts'
import { SystemList } from './system-list.tsx'

interface Props {
  readonly known: readonly KnownSystem[]
  readonly shelf: Shelf
  readonly session: Session
}

/** The systems that come with the app, and how to be rid of them. */
export function InventedSystems({ known, shelf: { systems, visits }, session }: Props) {
  const invented = [...systems, ...visits].filter(({ origin }) => origin === 'demo')
  const turn = (aside: boolean) =>
    void session.setAside(
      invented.map(({ id }) => id),
      aside,
    )
  if (invented.length === 0) return null
  if (known.length === 0) {
    return (
      <button type="button" class="key" onClick={() => turn(false)}>
        {t('Bring the invented systems back')}
      </button>
    )
  }
  return (
    <section aria-labelledby="demo">
      <h2 id="demo">{t('Invented systems, to try it out')}</h2>
      <button type="button" class="key" onClick={() => turn(true)}>
        {t('Take the invented systems away')}
      </button>
      <SystemList known={known} />
    </section>
  )
}
