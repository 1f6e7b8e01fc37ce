import type { Preferences } from '../session/preference.ts'
import type { Keeping } from '../session/session.ts'
import { visitFileOf } from '../session/visit-file-of.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { DeviceSwitches } from './device-switches.tsx'
import { download } from './download.ts'
import { KeptState } from './kept-state.tsx'

interface Props {
  readonly stored: StoredVisit
  /** Name of the system, for the name of the file. */
  readonly system: string | undefined
  readonly keeping: Keeping
  readonly preferences: Preferences
}

/** What can be done with the visit as a whole. */
export function VisitTools({ stored, system, keeping, preferences }: Props) {
  return (
    <div class="tools">
      <DeviceSwitches preferences={preferences} />
      <button type="button" class="key" onClick={() => download(visitFileOf(stored, system))}>
        Export
      </button>
      <KeptState keeping={keeping} />
    </div>
  )
}
