import { type FactName, factLabel, type SystemFacts, type SystemStatement } from '@chargewright/visit'
import { factInWords } from '../session/fact-in-words.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly facts: SystemFacts
  readonly assumed: ReadonlySet<FactName>
  readonly state: (stated: SystemStatement) => Kept
}

/** What stands on trade habit alone, each with the key that confirms it. Another answer is given in the form. */
export function AssumedList({ facts, assumed, state }: Props) {
  const open = [...assumed].filter((name) => facts[name] !== undefined)
  if (open.length === 0) return null
  return (
    <section class="assumed" aria-labelledby="assumed">
      <h2 id="assumed">{t('Usual in the trade, not checked here')}</h2>
      <p class="hint">
        {t('Nobody has read this at the unit. Confirm it there, or give the right answer under System.')}
      </p>
      <ul class="rows">
        {open.map((name) => {
          const stated = { [name]: facts[name] } as SystemStatement
          return (
            <li key={name} class="assumed-fact">
              <span>
                {t(factLabel(name))}: <strong>{factInWords({ kind: 'system-described', facts: stated }).typed}</strong>
              </span>
              <button
                type="button"
                class="key"
                aria-label={t('It is so: {0}', t(factLabel(name)))}
                onClick={() => void state(stated)}
              >
                {t('It is so')}
              </button>
            </li>
          )
        })}
      </ul>
    </section>
  )
}
