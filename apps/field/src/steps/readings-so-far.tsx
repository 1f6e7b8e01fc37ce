import type { Quantity, UnitPreference } from '@chargewright/quantity'
import { quantityInWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly head: readonly string[]
  readonly rows: readonly { readonly eventId: string; readonly cells: readonly Quantity[] }[]
  readonly units: UnitPreference
  readonly showEntry: (eventId: string) => void
}

/** The readings of a test, each with the way to its entry, where it is corrected or withdrawn. */
export function ReadingsSoFar({ head, rows, units, showEntry }: Props) {
  if (rows.length === 0) return null
  return (
    <table class="readings">
      <caption>{t('Readings so far')}</caption>
      <thead>
        <tr>
          {head.map((name) => (
            <th key={t(name)} scope="col">
              {t(name)}
            </th>
          ))}
          <td />
        </tr>
      </thead>
      <tbody>
        {rows.map(({ eventId, cells }) => (
          <tr key={eventId}>
            {cells.map((cell, i) => (
              <td key={head[i]}>{quantityInWords(cell, units)}</td>
            ))}
            <td>
              <button type="button" class="link" onClick={() => showEntry(eventId)}>
                {t('its entry')}
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
