import type { NextEntry } from '@chargewright/charging'
import { render, type UnitPreference } from '@chargewright/quantity'
import { entryLabel } from './entry-label.ts'
import { entryId, reveal } from './reveal.ts'

interface Props {
  readonly next: readonly NextEntry[]
  /** The sentence over it: a reason that it gives already is not said again. */
  readonly toldAbove: string
  readonly units: UnitPreference
}

/** What to enter next, the most telling first and large; each jumps to its field. */
export function NextEntries({ next, toldAbove, units }: Props) {
  const [first, ...others] = next
  if (!first) return null
  return (
    <div class="next">
      <button type="button" class="act" onClick={() => reveal(entryId(first.entry))}>
        Enter {lowerFirst(entryLabel(first.entry))}
      </button>
      {!toldAbove.includes(render(first.why, units)) && <p class="next-why">{render(first.why, units)}</p>}
      {others.length > 0 && (
        <ul class="next-others" aria-label="Also missing">
          {others.map(({ entry, why }) => (
            <li key={entryId(entry)}>
              <button type="button" class="link" onClick={() => reveal(entryId(entry))}>
                {entryLabel(entry)}
              </button>
              <span>{render(why, units)}</span>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)
