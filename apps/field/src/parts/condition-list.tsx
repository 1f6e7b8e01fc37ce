import type { Condition } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { inWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'
import { EvidenceTree } from './evidence-tree.tsx'
import { NextLink } from './next-link.tsx'

const STATES: Readonly<Record<Condition['state'], string>> = {
  met: 'is met',
  doubtful: 'doubtful',
  unmet: 'is not met',
  unknown: 'not known',
}

interface Props {
  readonly conditions: readonly Condition[]
  readonly units: UnitPreference
  readonly showEntry: (eventId: string) => void
}

/** What must hold before the method may speak, each with its state and what to do about it; what is wanting first. */
export function ConditionList({ conditions, units, showEntry }: Props) {
  if (conditions.length === 0) return null
  const held = conditions.filter(({ state }) => state === 'met')
  const wanting = conditions.filter(({ state }) => state !== 'met')
  return (
    <details class="fold" open={wanting.length > 0}>
      <summary>
        <h3>{t('Conditions')}</h3>
        <span class="group-count">{t('{0} of {1} hold', held.length, conditions.length)}</span>
      </summary>
      <ul class="judged">
        {[...wanting, ...held].map(({ id, state, evidence, remedy, next, again = [] }) => (
          <li key={id}>
            <span class={`state state-${state}`}>{t(STATES[state])}</span>
            <div>
              <EvidenceTree evidence={evidence} units={units} showEntry={showEntry} />
              {remedy && <p class="remedy">{inWords(remedy, units)}</p>}
              {[...(next ? [next] : []), ...again].map((one) => (
                <NextLink key={one.entry.what} next={one} />
              ))}
            </div>
          </li>
        ))}
      </ul>
    </details>
  )
}
