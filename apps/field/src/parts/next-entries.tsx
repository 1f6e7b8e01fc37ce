import { entryLabel, type NextEntry } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { inWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'
import { entryId, reveal } from './reveal.ts'

interface Props {
  readonly next: readonly NextEntry[]
  /** What stands over it: a reason that is given there is not said again. */
  readonly toldAbove: readonly string[]
  readonly units: UnitPreference
}

/** What to enter next, the most telling first and large; each jumps to its field. */
export function NextEntries({ next, toldAbove, units }: Props) {
  const [first, ...others] = next
  if (!first) return null
  const isTold = (why: string) => toldAbove.some((text) => text.includes(why))
  return (
    <div class="next">
      <button type="button" class="act" onClick={() => reveal(entryId(first.entry))}>
        {first.entry.kind === 'observation'
          ? t('Answer: {0}', lowerFirst(t(entryLabel(first.entry))))
          : t('Enter: {0}', lowerFirst(t(entryLabel(first.entry))))}
      </button>
      {!isTold(inWords(first.why, units)) && <p class="next-why">{inWords(first.why, units)}</p>}
      {others.length > 0 && (
        <ul class="next-others" aria-label={t('Also missing')}>
          {others.map(({ entry, why }) => (
            <li key={entryId(entry)}>
              <button type="button" class="link" onClick={() => reveal(entryId(entry))}>
                {t(entryLabel(entry))}
              </button>
              {why.template !== first.why.template && <span>{inWords(why, units)}</span>}
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)
