import type { UnitPreference } from '@chargewright/quantity'
import type { FactName, System, SystemStatement } from '@chargewright/visit'
import { useState } from 'preact/hooks'
import type { Kept } from '../session/session.ts'
import { SYSTEM_GROUPS } from '../session/system-groups.ts'
import { t } from '../words/t.ts'
import { SystemField } from './system-field.tsx'

interface Props {
  readonly system: System
  readonly units: UnitPreference
  /** What is wrong with kept statements, in words. */
  readonly remarks: Readonly<Partial<Record<FactName, string>>>
  readonly state: (stated: SystemStatement) => Kept
}

/** The system as described so far. The first group stands open on a new visit, since nothing can be said without it. */
export function SystemForm({ system, units, remarks, state }: Props) {
  // Decided once: a group must not fold up under the hand that fills it in.
  const [isNew] = useState(() => Object.keys(system.facts).length === 0)
  return (
    <section class="system" aria-labelledby="system">
      <h2 id="system">{t('System')}</h2>
      {SYSTEM_GROUPS.map(({ title, facts }, i) => (
        <details key={title} class="group" open={isNew && i === 0}>
          <summary>
            <h3>{t(title)}</h3>
            <span class="group-count">
              {t('{0} of {1}', facts.filter((name) => system.facts[name] !== undefined).length, facts.length)}
            </span>
          </summary>
          {facts.map((name) => (
            <SystemField key={name} name={name} system={system} units={units} remark={remarks[name]} state={state} />
          ))}
        </details>
      ))}
    </section>
  )
}
