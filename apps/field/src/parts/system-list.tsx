import { METERING_DEVICES } from '@chargewright/visit'
import type { KnownSystem } from '../session/known-systems.ts'
import { systemAddress } from '../session/route.ts'
import { t } from '../words/t.ts'
import { timeInWords } from './time-in-words.ts'

/** Systems by name, each the way to its page. */
export function SystemList({ known }: { readonly known: readonly KnownSystem[] }) {
  return (
    <ul class="rows">
      {known.map((one) => (
        <li key={one.system.id}>
          <SystemRow {...one} />
        </li>
      ))}
    </ul>
  )
}

function SystemRow({ system, visits, facts, lastEntry }: KnownSystem) {
  const about = [
    facts.refrigerant,
    facts.meteringDevice && t(METERING_DEVICES[facts.meteringDevice]),
    facts.nominalCapacity,
  ]
  const words = visits.length === 1 ? visits[0]?.about?.replace(INVENTED, '') : undefined
  return (
    <a class="row" href={systemAddress(system.id)}>
      <strong>{facts.name ?? t('System without a name')}</strong>
      <span class="row-aside">{countOf(visits.length)}</span>
      <span class="row-about">{about.filter((part) => part !== undefined).join(' · ') || t('not described yet')}</span>
      <span class="row-aside">{system.origin === 'demo' ? t('invented') : lastEntry && timeInWords(lastEntry)}</span>
      {words !== undefined && words !== '' && <span class="row-words">{words}</span>}
    </a>
  )
}

function countOf(visits: number): string {
  if (visits === 0) return t('no visit yet')
  return visits === 1 ? t('1 visit') : t('{0} visits', visits)
}

/** The opening of the demo files, which the mark beside the name says already. */
const INVENTED = /^Invented:[^.]*\.\s*/
