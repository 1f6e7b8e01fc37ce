import { fold, METERING_DEVICES } from '@chargewright/visit'
import { visitAddress } from '../session/route.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { Guard } from './guard.tsx'
import { timeInWords } from './time-in-words.ts'

/** Visits by name, the one with the latest entry first. */
export function VisitList({ visits }: { readonly visits: readonly StoredVisit[] }) {
  const latest = visits.toSorted((a, b) => lastTime(b).localeCompare(lastTime(a)))
  return (
    <ul class="visits">
      {latest.map((visit) => (
        <li key={visit.id}>
          <Guard fallback={<Unreadable visit={visit} />}>
            <VisitLink visit={visit} />
          </Guard>
        </li>
      ))}
    </ul>
  )
}

function VisitLink({ visit }: { readonly visit: StoredVisit }) {
  const { name, refrigerant, meteringDevice } = fold(visit).system.facts
  const about = [refrigerant, meteringDevice && METERING_DEVICES[meteringDevice]].filter((part) => part !== undefined)
  const at = lastTime(visit)
  return (
    <a href={visitAddress(visit.id)}>
      <strong>{name ?? 'System without a name'}</strong>
      <span class="visit-about">{about.join(' · ') || 'not described yet'}</span>
      {visit.about !== undefined && <span class="visit-about">{visit.about.replace(INVENTED, '')}</span>}
      <span class="visit-time">{visit.origin === 'demo' ? 'invented' : at === '' ? 'new' : timeInWords(at)}</span>
    </a>
  )
}

function Unreadable({ visit }: { readonly visit: StoredVisit }) {
  return (
    <a href={visitAddress(visit.id)}>
      <strong>A visit that this version cannot read</strong>
      <span class="visit-about">kept as it is</span>
    </a>
  )
}

/** The opening of the demo files, which the mark beside the name says already. */
const INVENTED = /^Invented:[^.]*\.\s*/

const lastTime = ({ events }: StoredVisit) => String(events.at(-1)?.at ?? '')
