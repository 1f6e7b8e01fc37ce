import type { UnitPreference } from '@chargewright/quantity'
import type { Preferences } from '../session/preference.ts'
import type { Keeping } from '../session/session.ts'
import type { SystemSoFar } from '../session/system-so-far.ts'
import { visitFileOf } from '../session/visit-file-of.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { t } from '../words/t.ts'
import type { VisitEvents } from '../worker/protocol.ts'
import { DeviceSettings } from './device-settings.tsx'
import { DeviceSwitches } from './device-switches.tsx'
import { download } from './download.ts'
import { KeptState } from './kept-state.tsx'
import { RecordKey } from './record-key.tsx'

interface Props {
  readonly stored: StoredVisit
  /** The visit, and what it begins with. */
  readonly events: VisitEvents
  /** Absent on the practice bench. */
  readonly system: SystemSoFar | undefined
  /** Of the system. */
  readonly name: string | undefined
  readonly units: UnitPreference
  readonly keeping: Keeping
  readonly preferences: Preferences
}

/** What can be done with the visit as a whole. */
export function VisitTools({ stored, events, system, name, units, keeping, preferences }: Props) {
  return (
    <div class="tools">
      <DeviceSwitches preferences={preferences} />
      <RecordKey visit={events} system={system} about={stored.about} name={name} units={units} />
      <button type="button" class="key" onClick={() => download(visitFileOf(stored, name))}>
        {t('Export')}
      </button>
      <KeptState keeping={keeping} />
      <DeviceSettings preferences={preferences} />
    </div>
  )
}
