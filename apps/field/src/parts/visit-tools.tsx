import type { UnitPreference } from '@chargewright/quantity'
import type { Preferences } from '../session/preference.ts'
import type { SystemSoFar } from '../session/system-so-far.ts'
import { visitFileOf } from '../session/visit-file-of.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { t } from '../words/t.ts'
import type { VisitEvents } from '../worker/protocol.ts'
import { DeviceSettings } from './device-settings.tsx'
import { download } from './download.ts'
import { RecordKey } from './record-key.tsx'
import { RECORD } from './reveal.ts'

interface Props {
  readonly stored: StoredVisit
  readonly exported: ((visit: StoredVisit) => void) | undefined
  /** The visit, and what it begins with. */
  readonly events: VisitEvents
  /** Nothing on the practice bench. */
  readonly system: () => SystemSoFar | undefined
  /** Of the system. */
  readonly name: string | undefined
  readonly units: UnitPreference
  readonly preferences: Preferences
}

/** What becomes of the visit: its record and its file. Under them, what is set once for all visits. */
export function VisitTools({ stored, exported, events, system, name, units, preferences }: Props) {
  const save = () => {
    download(visitFileOf(stored, name))
    exported?.(stored)
  }
  return (
    <section class="tools" aria-labelledby={RECORD}>
      <h2 id={RECORD} tabIndex={-1}>
        {t('Record')}
      </h2>
      <div class="tool-keys">
        <RecordKey visit={events} system={system} about={stored.about} name={name} units={units} />
        <button type="button" class="key" onClick={save}>
          {t('Export')}
        </button>
      </div>
      <DeviceSettings preferences={preferences} />
    </section>
  )
}
