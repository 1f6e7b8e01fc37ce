import { instantOf } from '../session/local-time.ts'
import { visitAddress } from '../session/route.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { t } from '../words/t.ts'
import { timeInWords } from './time-in-words.ts'

const HOUR_MS = 3_600_000
/** A visit with an entry this recent is one to go on with. */
const RECENT = 12 * HOUR_MS

interface Props {
  readonly visits: readonly StoredVisit[]
  /** Name of the system of a visit; left out on the page of that system. */
  readonly nameOf?: (visit: StoredVisit) => string | undefined
}

/** The way back into the visit that was just worked on: after a restart, or a look at another page. */
export function OpenVisit({ visits, nameOf }: Props) {
  const [latest] = visits
    .flatMap((visit) => {
      const last = visit.events.at(-1)?.at
      return last !== undefined && Math.abs(Date.now() - Date.parse(last)) < RECENT ? [{ visit, last }] : []
    })
    .toSorted((a, b) => instantOf(b.last) - instantOf(a.last))
  if (!latest) return null
  return (
    <a class="open-visit" href={visitAddress(latest.visit.id)}>
      {nameOf ? (
        <>
          <span>{t('Go on with the visit at')}</span>
          <strong>{nameOf(latest.visit) ?? t('a system without a name')}</strong>
        </>
      ) : (
        <strong>{t('Go on with the last visit')}</strong>
      )}
      <span>{t('Last entry {0}', timeInWords(latest.last))}</span>
    </a>
  )
}
