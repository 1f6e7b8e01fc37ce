import type { LookAlike } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { inWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'
import { EvidenceTree } from './evidence-tree.tsx'
import { NextLink } from './next-link.tsx'

const VERDICTS: Readonly<Record<LookAlike['verdict'], string>> = {
  explains: 'would explain it',
  excluded: 'ruled out',
  open: 'still open',
  unlikely: 'unlikely',
}

interface Props {
  readonly lookAlikes: readonly LookAlike[]
  readonly units: UnitPreference
  readonly showEntry: (eventId: string) => void
}

/** What else could make the same readings, and how each was judged. */
export function LookAlikeList({ lookAlikes, units, showEntry }: Props) {
  if (lookAlikes.length === 0) return null
  return (
    <details class="fold">
      <summary>
        <h3>{t('What else it could be')}</h3>
        <span class="group-count">{lookAlikes.length}</span>
      </summary>
      <ul class="judged">
        {lookAlikes.map(({ id, label, verdict, evidence, next }) => (
          <li key={id}>
            <span class={`state state-${verdict}`}>{t(VERDICTS[verdict])}</span>
            <div>
              <p class="judged-label">{inWords(label, units)}</p>
              <EvidenceTree evidence={evidence} units={units} showEntry={showEntry} />
              {next && <NextLink next={next} />}
            </div>
          </li>
        ))}
      </ul>
    </details>
  )
}
